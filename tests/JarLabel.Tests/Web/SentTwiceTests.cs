using JarLabel.Web.Forms;
using JarLabel.Web.Serving;

namespace JarLabel.Tests.Web;

/// <summary>A form that is sent again, whatever became of it the first time.</summary>
public sealed class SentTwiceTests : IDisposable
{
    private static readonly (string, string)[] Batch = [("grade", "garnet"), ("solvent", "ethanol-95"), ("cut", "1.5"), ("pour", "350 mL"), ("note", "of the first try"), ("do", "record")];

    private readonly WebShop shop = new();
    private readonly IdempotencyCache cache = new();
    private readonly string key;
    private int done;

    public SentTwiceTests() => key = cache.NewKey();

    public void Dispose() => shop.Dispose();

    /// <summary>The answer failed after the step was kept: the same form tells of it again, and does nothing.</summary>
    [Fact]
    public void What_failed_after_it_was_kept_is_not_done_again()
    {
        Assert.All(Enumerable.Range(0, 3), _ => Assert.Throws<FaultAfterKeeping>(() => Sent(() =>
        {
            done++;
            throw new FaultAfterKeeping("jar 1-9", new InvalidOperationException("the answer could not be made"));
        })));
        Assert.Equal(1, done);
    }

    [Fact]
    public void What_failed_before_may_be_sent_again()
    {
        Assert.All(Enumerable.Range(0, 2), _ => Assert.Throws<InvalidOperationException>(() => Sent(() =>
        {
            done++;
            throw new InvalidOperationException("nothing was kept");
        })));
        Assert.Equal(2, done);
    }

    /// <summary>It failed after it was kept and is sent again with other values: those are not done, and it is not said that they were.</summary>
    [Fact]
    public void What_was_kept_and_is_sent_with_other_values_is_told_apart()
    {
        Assert.Throws<FaultAfterKeeping>(() => Sent(() => throw new FaultAfterKeeping("jar 1-9", new InvalidOperationException("no answer"))));
        Assert.Equal(409, Sent(() => throw new InvalidOperationException("done twice"), "200 mL").Status);
    }

    /// <summary>Back in the browser brings the old form with its old key.</summary>
    [Fact]
    public async Task Sent_again_with_other_values_it_records_nothing_and_keeps_what_was_typed_until_it_is_sent_from_there()
    {
        var form = WebShop.Hidden((await shop.Get("/J/1-9/use")).Text);
        Assert.Equal(303, (await shop.Post("/J/1-9/use", [.. form, ("volume", "100 mL"), ("do", "record")])).Status);
        Assert.Equal(303, (await shop.Post("/J/1-9/use", [.. form, ("volume", " 100 mL"), ("job", ""), ("do", "record")])).Status);
        var told = await shop.Post("/J/1-9/use", [.. form, ("volume", "50 mL"), ("job", "viola"), ("do", "record")]);
        Assert.Equal(409, told.Status);
        Assert.All(["JL621", "is recorded already", "Nothing was recorded"], part => Assert.Contains(part, told.Seen, StringComparison.Ordinal));
        Assert.All(["value=\"50\"", "value=\"viola\"", "<a class=\"go\" href=\"/J/1-9\">"], part => Assert.Contains(part, told.Text, StringComparison.Ordinal));
        Assert.Single(shop.Jar(1).Events, e => e.Event is Used);
        Assert.Equal(303, (await shop.Post("/J/1-9/use", [.. WebShop.Hidden(told.Text), ("volume", "50 mL"), ("job", "viola"), ("do", "record")])).Status);
        Assert.Equal(2, shop.Jar(1).Events.Count(e => e.Event is Used));
    }

    [Fact]
    public async Task A_form_that_was_refused_is_taken_with_other_values()
    {
        var form = WebShop.Hidden((await shop.Get("/J/1-9/use")).Text);
        Assert.Equal(422, (await shop.Post("/J/1-9/use", [.. form, ("volume", "9 L"), ("do", "record")])).Status);
        Assert.Equal(303, (await shop.Post("/J/1-9/use", [.. form, ("volume", "90 mL"), ("do", "record")])).Status);
    }

    [Fact]
    public async Task A_form_of_an_earlier_run_of_the_server_records_no_second_jar_and_keeps_what_was_typed()
    {
        var form = WebShop.Hidden((await shop.Get("/mix")).Text);
        Assert.Equal(303, (await shop.Post("/mix", [.. form, .. Batch])).Status);
        shop.Restart();
        var told = await shop.Post("/mix", [.. form, .. Batch]);
        Assert.Equal(403, told.Status);
        Assert.All(["JL604", "may be recorded already"], part => Assert.Contains(part, told.Seen, StringComparison.Ordinal));
        Assert.All(["value=\"of the first try\"", "<option value=\"garnet\" selected>", "<a class=\"go\" href=\"/shelf\">"], part => Assert.Contains(part, told.Text, StringComparison.Ordinal));
        Assert.Equal(2, shop.Jars());

        // The mark that it is ours fits, the key does not: the key alone is enough.
        var fresh = WebShop.Hidden(told.Text);
        Assert.Equal(403, (await shop.Post("/mix", [.. fresh.Where(f => f.Name != "once"), .. form.Where(f => f.Name == "once"), .. Batch])).Status);
        Assert.Equal(2, shop.Jars());
        Assert.Equal(303, (await shop.Post("/mix", [.. fresh, .. Batch])).Status);
        Assert.Equal(3, shop.Jars());
    }

    [Fact]
    public async Task A_can_of_an_earlier_run_keeps_what_was_typed()
    {
        var form = WebShop.Hidden((await shop.Get("/can")).Text);
        shop.Restart();
        var told = await shop.Post("/can", [.. form, ("name", "the green can"), ("substance-1", "ethanol"), ("percent-1", "100")]);
        Assert.Equal(403, told.Status);
        Assert.Contains("value=\"the green can\"", told.Text, StringComparison.Ordinal);
        Assert.Equal(303, (await shop.Post("/can", [.. WebShop.Hidden(told.Text), ("name", "the green can"), ("substance-1", "ethanol"), ("percent-1", "100")])).Status);
    }

    [Fact]
    public async Task A_jar_that_was_worked_on_meanwhile_is_shown_as_it_is_now_with_what_was_typed()
    {
        var form = WebShop.Hidden((await shop.Get("/J/1-9/use")).Text);
        NoteJar.Do(shop.Bench(), JarNumber.From(1), "strained").Require();
        var told = await shop.Post("/J/1-9/use", [.. form, ("volume", "100 mL"), ("job", "viola"), ("do", "record")]);
        Assert.Equal(409, told.Status);
        Assert.Contains("note: strained", told.Seen, StringComparison.Ordinal);
        Assert.DoesNotContain("omebody else", told.Seen, StringComparison.Ordinal);
        Assert.All(["value=\"100\"", "value=\"viola\""], part => Assert.Contains(part, told.Text, StringComparison.Ordinal));
        Assert.Equal(303, (await shop.Post("/J/1-9/use", [.. WebShop.Hidden(told.Text), ("volume", "100 mL"), ("job", "viola"), ("do", "record")])).Status);
    }

    /// <summary>The code of a bag goes to what stands behind it, and is not called a misread jar.</summary>
    [Theory]
    [InlineData("BAG 1", "500 g")]
    [InlineData("bottle 1", "Ethanol 95 %")]
    public async Task The_code_of_a_bag_or_bottle_leads_to_it(string typed, string says)
    {
        shop.Stock("500 g", "1 gal");
        var number = typed.EndsWith('1') ? JarNumber.From(1).ToString() : typed;
        var sent = await shop.Get($"/?find={Uri.EscapeDataString(typed.Replace("1", number, StringComparison.Ordinal))}");
        Assert.Equal(303, sent.Status);
        var page = await shop.Get(sent.Location!);
        Assert.Equal(200, page.Status);
        Assert.DoesNotContain("misread", page.Seen, StringComparison.Ordinal);
        Assert.Contains(says, page.Seen, StringComparison.OrdinalIgnoreCase);
    }

    private Reply Sent(Func<(Reply, JarLabel.Web.Pages.DonePage?)> act, string volume = "100 mL") => cache.Of(
        "form",
        new FormValues(new Dictionary<string, string> { ["once"] = key, ["volume"] = volume }),
        _ => act(),
        () => throw new InvalidOperationException("its key is of this run"),
        () => Reply.Page("", 409));
}
