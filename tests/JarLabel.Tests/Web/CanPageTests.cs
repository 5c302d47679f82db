using JarLabel.Operations.Cans;

namespace JarLabel.Tests.Web;

/// <summary>A can is entered on the page as on the command line, by the same reader.</summary>
public sealed class CanPageTests : IDisposable
{
    private static readonly (string, string)[] Green = [("name", "the green can"), ("substance-1", "ethanol"), ("percent-1", "30-60"), ("substance-2", "methanol"), ("percent-2", "30 – 60 %")];

    private readonly WebShop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task A_can_is_entered_once_however_often_it_is_sent_and_a_jar_is_mixed_from_it()
    {
        Assert.Contains("/can", (await shop.Get("/")).Text, StringComparison.Ordinal);
        for (var sent = 0; sent < 2; sent++)
        {
            var page = await shop.Fill("/can", Green);
            Assert.True(page.Status == 303, page.Seen);
            Assert.Equal("/can", page.Location);
        }

        var can = Assert.Single(CanBook.All(shop.Bench()).Require());
        Assert.Equal("the-green-can", can.Solvent.Id);
        Assert.Equal(60m, can.Hazards.MethanolPercent);
        var listed = (await shop.Get("/can")).Seen;
        Assert.Contains("Ethanol 40 to 60 %, methanol 40 to 60 % by weight", listed, StringComparison.Ordinal);
        Assert.Contains("every class is answered for the worst", listed, StringComparison.Ordinal);
        Assert.Equal(303, (await shop.Fill("/mix", ("grade", "garnet"), ("solvent", "the-green-can"), ("cut", "1.5"), ("pour", "350 mL"), ("do", "record"))).Status);
        Assert.Equal("the-green-can", shop.Jar(2).Jar.Contents.Solvents[0].Solvent);
    }

    [Fact]
    public async Task Every_fault_is_told_and_what_was_filled_in_stays()
    {
        var page = await shop.Fill("/can", ("name", "the green can"), ("substance-1", "ethanol"), ("percent-1", "thirty"), ("percent-2", "5"));
        Assert.Equal(422, page.Status);
        Assert.Contains("JL151", page.Seen, StringComparison.Ordinal);
        Assert.Contains("JL201", page.Seen, StringComparison.Ordinal);
        Assert.Contains("value=\"thirty\"", page.Text, StringComparison.Ordinal);
        Assert.Contains("Nothing was recorded.", page.Seen, StringComparison.Ordinal);
        Assert.Contains("JL153", (await shop.Fill("/can", ("name", "x"), ("substance-1", "ethanol"), ("percent-1", "5"))).Seen, StringComparison.Ordinal);
        Assert.Equal(422, (await shop.Fill("/can", ("name", "nothing in it"))).Status);
        Assert.Equal(422, (await shop.Fill("/can", ("name", "ethanol-95"), ("substance-1", "ethanol"), ("percent-1", "100"))).Status);
        Assert.Empty(CanBook.All(shop.Bench()).Require());
    }

    /// <summary>As on every other form; and no advice is of the command line, which has no menus.</summary>
    [Theory]
    [InlineData("percent-1", "JL151", "Its percent 1", "Read \"thirty\" as a percent", "substance-1", "ethanol", "percent-1", "thirty")]
    [InlineData("percent-1", "JL151", "Its percent 1", "The percent is missing", "substance-1", "ethanol")]
    [InlineData("substance-2", "JL201", "Substance 2", "", "substance-1", "ethanol", "percent-1", "95", "percent-2", "5")]
    [InlineData("substance-2", "JL152", "Substance 2", "\"ethanol\" is chosen more than once", "substance-1", "ethanol", "percent-1", "95", "substance-2", "ethanol", "percent-2", "5")]
    [InlineData("substance-1", "JL106", "Substance 1", "is needed")]
    [InlineData("name", "JL106", "What it is called here", "is needed", "name", "", "substance-1", "ethanol", "percent-1", "100")]
    [InlineData("name", "JL224", "What it is called here", "such as \"Ethanol-95 2\"", "name", "Ethanol-95", "substance-1", "ethanol", "percent-1", "100")]
    [InlineData("name", "JL223", "What it is called here", "such as \"the green can\"", "name", "???", "substance-1", "ethanol", "percent-1", "100")]
    public async Task A_fault_stands_beside_its_field_in_the_words_of_the_page(string field, string code, string label, string says, params string[] filled)
    {
        var page = await shop.Fill("/can", [.. filled.Chunk(2).Select(pair => (pair[0], pair[1])).Concat([("name", "the green can")]).DistinctBy(pair => pair.Item1)]);
        Assert.Equal(422, page.Status);
        Assert.Matches($"<span class=\"hint\" id=\"h-{field}\">[^\n]*<small>{code}</small>", page.Text);
        Assert.Contains($"<a href=\"#f-{field}\">{label}</a>: see below.", page.Text, StringComparison.Ordinal);
        Assert.Matches($"name=\"{field}\"[^>]*aria-invalid=\"true\"", page.Text);
        Assert.Contains(says, page.Seen, StringComparison.Ordinal);
        Assert.All(["=90", $"{code}, "], typed => Assert.DoesNotContain(typed, page.Seen, StringComparison.Ordinal));
    }

    /// <summary>What is wrong with all of it together stands on top.</summary>
    [Theory]
    [InlineData("JL153", "choose \"undeclared ingredient\"", "5", "5")]
    [InlineData("JL153", "100 must lie between.", "30-40", "10-20")]
    public async Task Percentages_that_make_no_hundred_are_told_without_the_words_of_the_command_line(string code, string says, string one, string other)
    {
        var page = await shop.Fill("/can", ("name", "the green can"), ("substance-1", "ethanol"), ("percent-1", one), ("substance-2", "methanol"), ("percent-2", other));
        Assert.Contains($"<small>{code}</small>", page.Text, StringComparison.Ordinal);
        Assert.Contains(says, page.Seen, StringComparison.Ordinal);
        Assert.All(["=", "contains"], typed => Assert.DoesNotContain(typed, Regex.Match(page.Seen, "Nothing was recorded.*?Enter a can").Value, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_form_from_elsewhere_enters_nothing()
    {
        Assert.Equal(403, (await shop.Post("/can", Green)).Status);
        Assert.Equal(403, (await shop.Post("/can", [.. WebShop.Hidden((await shop.Get("/can")).Text), .. Green], origin: "http://evil.example")).Status);
        Assert.Empty(CanBook.All(shop.Bench()).Require());
    }
}
