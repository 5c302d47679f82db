namespace JarLabel.Tests.Web;

/// <summary>Amounts whose unit is tapped, and of several things that one may know the one that is meant. By hand: 350 mL are 0.09246 US gallons, which take 62.9 g of flakes
/// at 1 1/2 lb a gallon; 50 g do for 0.0735 gallons, 278 mL.</summary>
public sealed class AmountTests : IDisposable
{
    private static readonly (string, string)[] Garnet = [("grade", "garnet"), ("solvent", "ethanol-95"), ("cut", "1.5"), ("do", "show")];

    private readonly WebShop shop = new();

    public void Dispose() => shop.Dispose();

    [Theory]
    [InlineData("350", "mL", "62.9 g")]
    [InlineData("0.35", "L", "62.9 g")]
    [InlineData("350 mL", "gal", "62.9 g")] // what says its own unit keeps it
    [InlineData("1 1/2", "pt", "(128 g)")] // 709.8 mL
    [InlineData("\u00bd", "gal", "(340 g)")]
    public async Task A_figure_is_read_in_the_unit_beside_it(string figure, string unit, string flakes)
    {
        var page = await shop.Fill("/mix", [.. Garnet, ("pour", figure), ("pour-unit", unit)]);
        Assert.Equal(200, page.Status);
        Assert.Contains(flakes, page.Seen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("much", "mL")]
    [InlineData("350", "spoons")]
    [InlineData("1.000", "mL")]
    public async Task What_is_no_amount_is_told_and_stays(string figure, string unit)
    {
        var page = await shop.Fill("/mix", [.. Garnet, ("pour", figure), ("pour-unit", unit)]);
        Assert.Contains("class=\"fault\"", page.Text, StringComparison.Ordinal);
        Assert.Contains($"value=\"{figure}\"", page.Text, StringComparison.Ordinal);
        Assert.Equal(1, shop.Jars());
    }

    /// <summary>A part of what is in a jar has no unit.</summary>
    [Theory]
    [InlineData("half", "mL", 201)]
    [InlineData("25 %", "mL", 100.5)]
    [InlineData("100", "mL", 100)]
    [InlineData("1/2", "gal", 201)] // never more than there is
    public async Task A_part_is_a_part_whatever_unit_stands_beside_it(string taken, string unit, double milliliters)
    {
        Assert.Equal(303, (await shop.Fill("/J/1-9/use", ("volume", taken), ("volume-unit", unit), ("do", "record"))).Status);
        Assert.Equal(402 - milliliters, shop.Jar(1).Jar.Contents.Liquid.Milliliters, 0.5);
    }

    [Fact]
    public async Task Of_what_one_may_know_only_what_was_chosen_counts_and_alone_what_is_filled_in()
    {
        var flakes = await shop.Fill("/mix", [.. Garnet, ("known", "cut flakes"), ("flakes", "50"), ("flakes-unit", "g"), ("pour", "350 mL")]);
        Assert.Contains("278 mL", flakes.Seen, StringComparison.Ordinal);
        Assert.DoesNotContain("62.9 g", flakes.Seen, StringComparison.Ordinal);
        var both = await shop.Fill("/mix", ("grade", "garnet"), ("solvent", "ethanol-95"), ("cut", "3"), ("known", "pour flakes"), ("pour", "350 mL"), ("flakes", "62.9 g"), ("do", "show"));
        Assert.Contains("1½ lb cut", both.Seen, StringComparison.Ordinal);
        var other = await shop.Fill("/mix", [.. Garnet, ("known", "cut pour"), ("flakes", "50 g")]); // where nothing hides the other fields
        Assert.Contains("278 mL", other.Seen, StringComparison.Ordinal);
        var several = await shop.Fill("/mix", [.. Garnet, ("pour", "350 mL"), ("makes", "1 L")]);
        Assert.Contains("JL13", several.Text, StringComparison.Ordinal);
        Assert.DoesNotMatch("name=\"known\"[^>]* checked", several.Text);
    }

    [Theory]
    [InlineData("/mix", "cut pour")]
    [InlineData("/mix?cut=2&flakes=50%20g", "cut flakes")]
    [InlineData("/mix?makes=1%20pt", "cut makes")]
    [InlineData("/mix?pour=350%20mL&flakes=50%20g", "pour flakes")]
    [InlineData("/calc/mix?fill=500%20mL", "cut fill")]
    public async Task A_link_opens_the_form_at_what_it_fills_in(string address, string known)
    {
        var page = (await shop.Get(address)).Text;
        Assert.Equal(known, Assert.Single(Regex.Matches(page, "name=\"known\" value=\"([^\"]*)\"[^>]* checked")).Groups[1].Value);
    }

    /// <summary>Bags and bottles too; a shop of US measure begins with that.</summary>
    [Fact]
    public async Task The_shops_own_units_come_first()
    {
        Assert.Matches("name=\"pour-unit\"[^>]*><option value=\"fl oz\" selected>", (await shop.Get("/mix")).Text);
        Assert.Equal(303, (await shop.Fill("/shop/set", ("setting", "units"), ("value", "metric"), ("do", "record"))).Status);
        Assert.Matches("name=\"pour-unit\"[^>]*><option value=\"mL\" selected>", (await shop.Get("/mix")).Text);
        Assert.Matches("name=\"mass-unit\"[^>]*><option value=\"g\" selected>", (await shop.Get("/bag/add")).Text);
        Assert.Equal(303, (await shop.Fill("/bag/add", ("grade", "garnet"), ("mass", "500"), ("mass-unit", "g"), ("date", "2026-01-05"), ("do", "record"))).Status);
        Assert.Contains("500 g", (await shop.Get("/bag/list")).Seen, StringComparison.Ordinal);
    }
}
