using JarLabel.Tests.Render.Pictures;

namespace JarLabel.Tests.Web;

/// <summary>A photo of labels, sent from the page: the jar's page when there is one, a list when there are several, and words that help when there is none.</summary>
public sealed class PhotoPageTests : IDisposable
{
    private readonly WebShop shop = new();

    public void Dispose() => shop.Dispose();

    // Exif orientation: 1 as it is stored, 3 upside down, 6 and 8 a quarter turned.
    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(6)]
    [InlineData(8)]
    public async Task A_photo_of_one_label_opens_its_jar_however_the_telephone_was_held(byte orientation)
    {
        var page = await shop.Photo(OddFiles.Turned(Jpeg(Code(1)), orientation));
        Assert.Equal((303, "/J/1-9.1"), (page.Status, page.Location));
        Assert.Contains("garnet", (await shop.Get(page.Location!)).Seen, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Two_labels_side_by_side_are_listed_with_the_way_to_each_and_the_list_can_be_come_back_to()
    {
        shop.Mix("200 mL", new LabelChoice(), grade: "blonde");
        var page = await shop.Photo(Jpeg(Code(1), Code(2)));
        Assert.Equal(303, page.Status);
        Assert.StartsWith("/scan?found=", page.Location, StringComparison.Ordinal);
        for (var times = 0; times < 2; times++)
        {
            var list = await shop.Get(page.Location!);
            Assert.Contains("In the photo: 2 jars", list.Seen, StringComparison.Ordinal);
            Assert.Equal(["/J/1-9.1", "/J/2-7.1"], Listed(list).Order(StringComparer.Ordinal));
            Assert.Contains("id=\"f-what\"", list.Text, StringComparison.Ordinal);
        }

        Assert.Equal(200, (await shop.Get("/J/2-7.1")).Status);
    }

    [Fact]
    public async Task An_old_label_and_its_new_one_are_told_apart()
    {
        var old = Code(1);
        Assert.Equal(303, (await shop.Fill("/J/1-9/thin", ("to", "1"), ("do", "record"))).Status);
        var list = await shop.Get((await shop.Photo(Jpeg(old, Code(1)))).Location!);
        Assert.Equal(["/J/1-9.1", "/J/1-9.2"], Listed(list).Order(StringComparer.Ordinal));
        Assert.Single(Regex.Matches(list.Seen, "this label is out of date"));
    }

    [Theory]
    [InlineData("BAG 1-9", "/scan?what=BAG%201-9", "Bag 1-9")]
    [InlineData("BOTTLE 1-9", "/scan?what=BOTTLE%201-9", "Bottle 1-9")]
    public async Task A_bag_or_bottle_opens_what_is_known_of_it(string code, string at, string title)
    {
        shop.Stock("500 g", "1 L");
        var page = await shop.Photo(Jpeg(OddFiles.Code(code)));
        Assert.Equal((303, at), (page.Status, page.Location));
        Assert.Contains(title, (await shop.Get(at)).Seen, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Jars_bags_and_bottles_in_one_photo_are_one_list()
    {
        shop.Stock("500 g", "1 L");
        var list = await shop.Get((await shop.Photo(Jpeg(Code(1), OddFiles.Code("BAG 1-9"), OddFiles.Code("BOTTLE 1-9")))).Location!);
        Assert.Contains("In the photo: 1 jar, 1 bag, 1 bottle", list.Seen, StringComparison.Ordinal);
        Assert.Equal(["/J/1-9.1", "/scan?what=BAG%201-9", "/scan?what=BOTTLE%201-9"], Listed(list).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task A_code_of_something_else_beside_a_label_does_not_stand_in_the_way()
    {
        Assert.Equal("/J/1-9.1", (await shop.Photo(Jpeg(OddFiles.Code("https://example.org/flyer"), Code(1)))).Location);
        var list = await shop.Get((await shop.Photo(Jpeg(OddFiles.Code("https://example.org/flyer")))).Location!);
        Assert.Contains("No label of this shop was read", list.Seen, StringComparison.Ordinal);
        Assert.Contains("JL184", list.Seen, StringComparison.Ordinal);
        Assert.Empty(Listed(list));
    }

    [Fact]
    public async Task A_label_of_another_shop_beside_ones_own_is_not_kept_quiet()
    {
        var list = await shop.Get((await shop.Photo(Jpeg(OddFiles.Code("HTTP://192.168.7.7:5080/J/1-9.1"), Code(1)))).Location!);
        Assert.Equal(["/J/1-9.1"], Listed(list));
        Assert.Contains("JL185", list.Seen, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Script_in_a_code_stays_text()
    {
        var list = await shop.Get((await shop.Photo(Jpeg(OddFiles.Code("<script>alert(1)</script>")))).Location!);
        Assert.Contains("&lt;script&gt;", list.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("<script>alert", list.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_nothing_is_found_it_is_told_what_helps_and_a_number_can_be_typed()
    {
        var page = await shop.Photo(PngFile.Plain(800, 600));
        Assert.Equal(422, page.Status);
        Assert.Contains("JL182", page.Seen, StringComparison.Ordinal);
        Assert.Contains("Go closer", page.Seen, StringComparison.Ordinal);
        Assert.Contains("glare", page.Seen, StringComparison.Ordinal);
        Assert.Contains("type the number beside the code", page.Seen, StringComparison.Ordinal);
        Assert.Contains("id=\"f-what\"", page.Text, StringComparison.Ordinal);
        Assert.Contains("type=\"file\"", page.Text, StringComparison.Ordinal);
        Assert.Contains("<title>Nothing was read: Scan a label</title>", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_kind_of_picture_that_is_not_read_is_named_with_the_way_to_one_that_is()
    {
        var page = await shop.Photo([0, 0, 0, 24, .. "ftypheic"u8, 0, 0, 0, 0, .. "mif1heic"u8, .. new byte[200]]);
        Assert.Equal(422, page.Status);
        Assert.Contains("JL380", page.Seen, StringComparison.Ordinal);
        Assert.Contains("This is a HEIC picture", page.Seen, StringComparison.Ordinal);
        Assert.Contains("save or send a copy of it as JPEG", page.Seen, StringComparison.Ordinal);
        Assert.DoesNotContain("glare", page.Seen, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_read_in_a_photo_is_no_longer_kept_after_the_server_was_started_anew()
    {
        shop.Mix("200 mL", new LabelChoice());
        var at = (await shop.Photo(Jpeg(Code(1), Code(2)))).Location!;
        shop.Restart();
        var page = await shop.Get(at);
        Assert.Equal(200, page.Status);
        Assert.Contains("no longer kept", page.Seen, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_form_needs_no_script_and_the_list_of_jars_leads_to_it()
    {
        var form = Regex.Match((await shop.Get("/scan")).Text, "<form class=\"photo\".*?</form>", RegexOptions.Singleline).Value;
        Assert.Contains("method=\"post\" action=\"/scan\" enctype=\"multipart/form-data\"", form, StringComparison.Ordinal);
        Assert.Matches("<input type=\"file\" id=\"photo\" name=\"photo\" accept=\"image/\\*\" capture=\"environment\"", form);
        Assert.Contains("<button>", form, StringComparison.Ordinal);
        Assert.Contains("<a class=\"go first\" href=\"/scan\">Scan a label</a>", (await shop.Get("/")).Text, StringComparison.Ordinal);
    }

    private Picture Code(int jar) => OddFiles.Code(shop.Jar(jar).Events.Select(e => e.Event).OfType<Labelled>().Last().Payload);

    private static byte[] Jpeg(params Picture[] labels) => Picture.Tiled(labels.Length, labels).Grained(4, 1).File(SKEncodedImageFormat.Jpeg);

    private static string[] Listed(Page page) => [.. Regex.Matches(Regex.Match(page.Text, "<ul class=\"jars\">.*?</ul>", RegexOptions.Singleline).Value, "href=\"([^\"]*)\"").Select(found => WebUtility.HtmlDecode(found.Groups[1].Value))];
}
