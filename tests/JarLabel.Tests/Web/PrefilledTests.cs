namespace JarLabel.Tests.Web;

/// <summary>What a link fills in, and what a menu starts on: nothing is ever chosen that nobody meant.</summary>
public sealed class PrefilledTests : IDisposable
{
    private readonly WebShop shop = new();

    public void Dispose() => shop.Dispose();

    [Theory]
    [InlineData("/bag/discard?bag=2", "bag", "2-7")]
    [InlineData("/bag/discard?bag=2-7", "bag", "2-7")]
    [InlineData("/bag/left?bag=2", "bag", "2-7")]
    [InlineData("/bag/test?bag=2", "bag", "2-7")]
    [InlineData("/bag/undo?bag=2", "bag", "2-7")]
    [InlineData("/bottle/discard?bottle=2", "bottle", "2-7")]
    [InlineData("/bottle/left?bottle=2", "bottle", "2-7")]
    [InlineData("/bottle/move?bottle=2", "bottle", "2-7")]
    [InlineData("/bottle/undo?bottle=2", "bottle", "2-7")]
    [InlineData("/mix?bag=2&bottle=1", "bag", "2-7")]
    [InlineData("/mix?bag=2&bottle=1", "bottle", "1-9")]
    [InlineData("/J/1/thin?bottle=2", "bottle", "2-7")]
    [InlineData("/J/1/thicken?bag=2", "bag", "2-7")]
    [InlineData("/mix?grade=Garnet", "grade", "garnet")]
    [InlineData("/mix?solvent=Ethanol-95", "solvent", "ethanol-95")]
    public async Task A_value_given_chooses_what_reads_as_the_same(string link, string field, string chosen)
    {
        Twice();
        Assert.Equal(chosen, Chosen((await shop.Get(link)).Text, field));
    }

    [Theory]
    [InlineData("/bag/discard?bag=9", "bag", "9")]
    [InlineData("/bag/discard?bag=2-2", "bag", "2-2")]
    [InlineData("/bottle/move?bottle=9&shelf=attic", "shelf", "attic")]
    [InlineData("/mix?bag=none", "bag", "none")]
    [InlineData("/mix?sheet=nothing", "sheet", "nothing")]
    [InlineData("/shop/set?setting=colour", "setting", "colour")]
    public async Task A_value_that_is_no_choice_stands_there_itself_and_no_other_in_its_place(string link, string field, string chosen)
    {
        Twice();
        Assert.Equal(chosen, Chosen((await shop.Get(link)).Text, field));
    }

    /// <summary>A printer of the network need not be one that the shop has named.</summary>
    [Theory]
    [InlineData("ipp://192.168.1.30/ipp/print", ">ipp://192.168.1.30/ipp/print<")]
    [InlineData("attic", ">attic: not among these<")]
    public async Task The_address_of_a_printer_stands_as_it_is(string printer, string shown)
    {
        Twice();
        Assert.Equal(303, (await shop.Fill("/shop/set", ("setting", "printer"), ("value", "bench=ipp://192.168.1.31/ipp/print"), ("do", "record"))).Status);
        Assert.Contains(shown, System.Net.WebUtility.HtmlDecode((await shop.Get($"/J/1/label?print-to={Uri.EscapeDataString(printer)}")).Text), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_bag_given_in_a_shop_without_bags_is_not_left_out_in_silence()
    {
        var form = await shop.Get("/mix?bag=3");
        Assert.Equal("3", Chosen(form.Text, "bag"));
        Assert.Contains("There is no bag 3", (await shop.Fill("/mix", ("grade", "garnet"), ("solvent", "ethanol-95"), ("cut", "1"), ("pour", "100 mL"), ("bag", "3"), ("do", "record"))).Seen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/bag/left", "bag")]
    [InlineData("/bag/test", "bag")]
    [InlineData("/bag/undo", "bag")]
    [InlineData("/bag/discard", "bag")]
    [InlineData("/bottle/left", "bottle")]
    [InlineData("/bottle/undo", "bottle")]
    [InlineData("/bottle/discard", "bottle")]
    [InlineData("/bottle/move", "bottle")]
    [InlineData("/shop/set", "setting")]
    public async Task A_menu_that_must_be_filled_in_starts_on_nothing(string form, string field)
    {
        shop.Stock("500 g", "1 gal");
        var page = await shop.Get(form);
        Assert.Equal("", Chosen(page.Text, field));
        Assert.Contains("<option value=\"\" selected>choose</option>", page.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/bag/left", "/bag/add")]
    [InlineData("/bag/test", "/bag/add")]
    [InlineData("/bag/discard?bag=1", "/bag/add")]
    [InlineData("/bottle/undo", "/bottle/add")]
    [InlineData("/bottle/move", "/bottle/add")]
    public async Task With_nothing_to_choose_from_a_form_says_so_and_leads_to_what_adds_one(string form, string adds)
    {
        var page = await shop.Get(form);
        Assert.Contains("there is none to choose here", page.Seen, StringComparison.Ordinal);
        Assert.Contains($"<a class=\"go\" href=\"{adds}\">", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("<button", page.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/J/1-9/decant", "the one it came from")]
    [InlineData("/blend", "the one it came from")]
    [InlineData("/mix", "the shop&#x27;s first")]
    public async Task The_shelf_is_the_usual_one_until_another_is_chosen(string form, string words) =>
        Assert.Contains($"<option value=\"\" selected>{words}</option>", (await shop.Get(form)).Text.Replace("'", "&#x27;", StringComparison.Ordinal), StringComparison.Ordinal);

    /// <summary>An example of an observation is no observation.</summary>
    [Theory]
    [InlineData("/J/1/test?verdict=pass&tack-free=30&humidity=55", "verdict", "")]
    [InlineData("/bag/test?bag=1&pinch=all", "pinch", "")]
    public async Task What_must_be_seen_is_not_filled_in_by_a_link(string link, string field, string chosen)
    {
        shop.Stock("500 g", "1 gal");
        var page = await shop.Get(link);
        Assert.Equal(chosen, Chosen(page.Text, field));
        Assert.DoesNotContain("value=\"30\"", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("value=\"55\"", page.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/bag/left?bag=1&weight=120%20g", "120 g")]
    [InlineData("/bottle/left?bottle=1&volume=200%20mL", "200 mL")]
    [InlineData("/calibrate?sheet=letter-2x5-101.6x50.8&dx=0.8&sx=199/200", "0.8")]
    public async Task What_must_be_measured_is_not_filled_in_by_a_link(string link, string value)
    {
        shop.Stock("500 g", "1 gal");
        Assert.DoesNotContain($"value=\"{value}\"", (await shop.Get(link)).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task No_page_links_to_an_observation()
    {
        var printed = await shop.Get((await shop.Fill("/calibrate", ("sheet", "letter-2x5-101.6x50.8"), ("do", "record"))).Location!);
        Assert.Contains("href=\"/calibrate?sheet=letter-2x5-101.6x50.8\"", printed.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("verdict=", (await shop.Get("/keeping")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Copies_which_go_with_a_list_are_not_on_the_page_of_one_batch()
    {
        Assert.DoesNotContain("name=\"copies\"", (await shop.Get("/mix")).Text, StringComparison.Ordinal);
        Assert.Contains("name=\"copies\"", (await shop.Get("/J/1-9/label")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Several_copies_of_a_label_are_fetched_like_one()
    {
        var done = await shop.Get((await shop.Fill("/J/1-9/label", ("copies", "3"), ("do", "record"))).Location!);
        var file = Regex.Match(done.Text, "href=\"(/labels/[^\"]+)\"").Groups[1].Value;
        Assert.Equal("application/pdf", (await shop.Get(file)).Headers["Content-Type"]);
        Assert.DoesNotContain(shop.Folder, done.Seen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("use")]
    [InlineData("thin")]
    [InlineData("thicken")]
    [InlineData("decant")]
    [InlineData("test")]
    [InlineData("move")]
    [InlineData("note")]
    [InlineData("label")]
    [InlineData("card")]
    [InlineData("discard")]
    public async Task A_form_of_a_jar_that_is_gone_says_so_at_once_and_has_no_button(string step)
    {
        var form = WebShop.Hidden((await shop.Get($"/J/1-9/{step}")).Text);
        DiscardJar.Do(shop.Bench(), JarNumber.From(1), null).Require();
        var page = await shop.Get($"/J/1-9/{step}");
        Assert.Contains("was discarded", page.Seen, StringComparison.Ordinal);
        Assert.Contains("role=\"alert\"", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("<button", page.Text, StringComparison.Ordinal);
        Assert.True((await shop.Post($"/J/1-9/{step}", [.. form, ("do", "record")])).Status is 409 or 422);
        Assert.Contains("<button", (await shop.Get("/J/1-9/undo")).Text, StringComparison.Ordinal);
    }

    private void Twice()
    {
        shop.Stock("500 g", "1 gal");
        shop.Stock("400 g", "1 L");
    }

    /// <summary>The value that a browser sends of a menu, or of buttons of which one may be on.</summary>
    private static string Chosen(string html, string field)
    {
        if (Regex.Matches(html, $"<input type=\"radio\" name=\"{field}\" value=\"([^\"]*)\"[^>]*>") is { Count: > 0 } buttons)
        {
            return buttons.FirstOrDefault(button => button.Value.Contains(" checked", StringComparison.Ordinal))?.Groups[1].Value ?? "";
        }

        var menu = Regex.Match(html, $"<select [^>]*name=\"{field}\".*?</select>", RegexOptions.Singleline).Value;
        return Regex.Matches(menu, "<option value=\"([^\"]*)\"( selected)?>") is { Count: > 0 } options
            ? (options.FirstOrDefault(option => option.Groups[2].Success) ?? options[0]).Groups[1].Value
            : throw new InvalidOperationException($"There is no menu {field}.");
    }
}
