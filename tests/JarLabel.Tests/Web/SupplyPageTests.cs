namespace JarLabel.Tests.Web;

/// <summary>From every list there is a way to each row, and from a bag or bottle to all that can be done with it.</summary>
public sealed partial class SupplyPageTests : IDisposable
{
    private readonly WebShop shop = new();

    public SupplyPageTests() => shop.Stock("500 g", "1 L");

    public void Dispose() => shop.Dispose();

    [Theory]
    [InlineData("/", "bag", "left", "test", "label", "discard", "undo")]
    [InlineData("/bag/list", "bag", "left", "test", "label", "discard", "undo")]
    [InlineData("/", "bottle", "left", "move", "label", "discard", "undo")]
    [InlineData("/bottle/list", "bottle", "left", "move", "label", "discard", "undo")]
    public async Task A_bag_or_bottle_in_a_list_leads_to_all_that_can_be_done_with_it(string list, string kind, params string[] steps)
    {
        var listed = await shop.Get(list);
        var one = Assert.Single(Links(listed), link => link.StartsWith($"/scan?what={kind.ToUpperInvariant()}", StringComparison.Ordinal));
        var seen = await shop.Get(one);
        foreach (var step in steps)
        {
            var form = await shop.Get(Assert.Single(Links(seen), link => link.StartsWith($"/{kind}/{step}?", StringComparison.Ordinal)));
            Assert.Equal(200, form.Status);
            Assert.Contains("<option value=\"1-9\" selected>", form.Text, StringComparison.Ordinal);
        }
    }

    /// <summary>What hands are about to do with a jar hangs on it, and a step that is not worked out first has no other place to tell it.</summary>
    [Theory]
    [InlineData("use")]
    [InlineData("move")]
    [InlineData("note")]
    [InlineData("thin")]
    [InlineData("label")]
    public async Task What_is_known_of_a_jar_stands_on_its_forms(string step)
    {
        await shop.Fill("/mix", ("bag", "1-9"), ("grade", "garnet"), ("solvent", "ethanol-95"), ("cut", "1.5"), ("pour", "1 L"), ("do", "record"));
        shop.Now = shop.Now.AddDays(4);
        await shop.Fill("/bag/test", ("bag", "1-9"), ("pinch", "cloudy"), ("do", "record"));
        var form = (await shop.Get($"/J/2-7/{step}")).Seen;
        Assert.Contains("A pinch of bag 1-9 came out cloudy", form, StringComparison.Ordinal);
        Assert.Contains("at most 1 US quart", form, StringComparison.Ordinal);
        await shop.Fill("/J/2-7/test", ("verdict", "fail"), ("do", "record"));
        Assert.Contains("failed its drying test", (await shop.Get($"/J/2-7/{step}")).Seen, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_jar_in_a_list_leads_to_its_page() =>
        Assert.Contains("/J/1-9", Links(await shop.Get("/shelf")));

    [Theory]
    [InlineData("bag 1", "/scan?what=bag%201")]
    [InlineData("BOTTLE1", "/scan?what=BOTTLE1")]
    [InlineData("bag 1-9", "/scan?what=bag%201-9")]
    [InlineData("jar 1", "/J/1-9")]
    [InlineData("Jar1-9", "/J/1-9")]
    public async Task What_stands_on_a_label_is_found_as_a_hand_writes_it(string typed, string where)
    {
        var found = await shop.Get($"/?find={Uri.EscapeDataString(typed)}");
        Assert.Equal((303, where), (found.Status, found.Location));
        Assert.Equal(200, (await shop.Get(where)).Status);
    }

    /// <summary>A number that is said with its kind is of that kind, even where a jar has the same.</summary>
    [Fact]
    public async Task A_bag_is_not_taken_for_the_jar_of_its_number() =>
        Assert.Contains("Bag 1-9", (await shop.Get("/scan?what=bag%201")).Seen, StringComparison.Ordinal);

    [Fact]
    public async Task Who_plans_with_what_can_poison_is_told_so()
    {
        const string job = "for=pad&area=2%20sq%20ft&coats=2&grade=garnet&do=show&solvent=";
        Assert.Contains("Cannot be made nonpoisonous", (await shop.Get($"/plan?{job}methanol")).Seen, StringComparison.Ordinal);
        Assert.DoesNotContain("nonpoisonous", (await shop.Get($"/plan?{job}ethanol-95")).Seen, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_bottle_that_stands_there_already_is_not_said_to_be_recorded()
    {
        var done = await shop.Get((await shop.Fill("/bottle/move", ("bottle", "1-9"), ("shelf", "main"), ("do", "record"))).Location!);
        Assert.All(["JL218", "Nothing to record"], part => Assert.Contains(part, done.Seen, StringComparison.Ordinal));
        Assert.DoesNotContain("Recorded", done.Seen, StringComparison.Ordinal);
        await shop.Fill("/shop/set", ("setting", "shelf"), ("value", "attic=20 C"), ("do", "record"));
        Assert.Contains("Recorded", (await shop.Get((await shop.Fill("/bottle/move", ("bottle", "1-9"), ("shelf", "attic"), ("do", "record"))).Location!)).Seen, StringComparison.Ordinal);
    }

    /// <summary>Where a page always has a value, leaving it away is no advice.</summary>
    [Theory]
    [InlineData("/mix", "bottle", "“Alcohol” ethanol 95 % by volume", "grade", "garnet", "solvent", "methanol", "cut", "1", "pour", "100 mL")]
    [InlineData("/mix", "bag", "“Flakes” garnet", "grade", "blonde", "solvent", "ethanol-95", "cut", "1", "pour", "100 mL")]
    [InlineData("/J/1-9/thin", "bottle", "“Alcohol” ethanol 95 % by volume", "solvent", "methanol", "to", "1")]
    [InlineData("/J/1-9/thicken", "bag", "“Flakes” garnet", "grade", "blonde", "to", "2")]
    public async Task What_a_bag_or_bottle_holds_is_proposed_where_something_else_was_asked_for(string form, string from, string proposed, params string[] fields)
    {
        var told = await shop.Fill(form, [(from, "1-9"), .. fields.Chunk(2).Select(pair => (pair[0], pair[1])), ("do", "record")]);
        Assert.Equal(422, told.Status);
        Assert.Contains("JL158", told.Seen, StringComparison.Ordinal);
        Assert.Contains($"where that is what is meant, {proposed}.", told.Seen, StringComparison.Ordinal);
    }

    private static string[] Links(Page page) => [.. Link().Matches(page.Text).Select(match => WebUtility.HtmlDecode(match.Groups[1].Value))];

    [GeneratedRegex("href=\"([^\"]*)\"")]
    private static partial Regex Link();
}
