namespace JarLabel.Tests.Web;

/// <summary>What somebody remembers of a jar finds it: flakes, a job, a note.</summary>
public sealed class SearchTests : IDisposable
{
    private readonly WebShop shop = new();

    public SearchTests()
    {
        shop.Mix("100 mL", grade: "blonde", job: "viola top");
        shop.Mix("100 mL", note: "from the tin of Ada");
    }

    public void Dispose() => shop.Dispose();

    [Theory]
    [InlineData("blonde", "/J/2-7")]
    [InlineData("Viola", "/J/2-7")]
    [InlineData("viola blonde", "/J/2-7")]
    [InlineData("tin ada", "/J/3-5")]
    [InlineData("2", "/J/2-7")]
    public async Task Words_that_one_jar_fits_lead_to_it(string words, string address)
    {
        var page = await shop.Get($"/?find={Uri.EscapeDataString(words)}");
        Assert.Equal((303, address), (page.Status, page.Location));
    }

    [Fact]
    public async Task Words_that_several_jars_fit_list_those_and_no_other()
    {
        var page = await shop.Get("/?find=GARNET");
        Assert.Equal(200, page.Status);
        Assert.Contains("2 jars with “GARNET”", page.Seen, StringComparison.Ordinal);
        Assert.Contains("/J/1-9", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("/J/2-7", page.Text, StringComparison.Ordinal);
        Assert.Contains("value=\"GARNET\"", page.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("mahogany")]
    [InlineData("viola garnet")]
    [InlineData("<script>")]
    public async Task Words_that_no_jar_fits_say_what_was_read(string words)
    {
        var page = await shop.Get($"/?find={Uri.EscapeDataString(words)}");
        Assert.Equal(404, page.Status);
        Assert.Contains($"No jar with “{words}”", System.Net.WebUtility.HtmlDecode(page.Text), StringComparison.Ordinal);
        Assert.Contains("name=\"find\" value=", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("<script>", page.Text, StringComparison.Ordinal);
    }
}
