namespace JarLabel.Tests.Web;

/// <summary>The shop's own files looked through from a page, also where nothing else of the shop opens any more.</summary>
public sealed class CheckPageTests : IDisposable
{
    private readonly WebShop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task Every_fault_of_the_served_shops_files_stands_on_the_page_at_once()
    {
        Write("shop.json", """{ "rules": "iso" }""");
        Write("catalog/grades.json", """[ { "id": 5 } ]""");
        Write("layouts/sheets/own.json", """{ "id": "own", "title": 5 }""");
        Assert.Equal(503, (await shop.Get("/")).Status);
        var page = await shop.Get("/check");
        Assert.Equal(200, page.Status);
        Assert.All(["shop.json#/rules", "catalog/grades.json#/0/id", "sheets/own.json#/title"], place => Assert.Contains($", {place}", page.Seen, StringComparison.Ordinal));
        Assert.DoesNotContain(shop.Folder, page.Seen, StringComparison.Ordinal);
        Assert.DoesNotContain("The answer is shown here", page.Seen, StringComparison.Ordinal);
    }

    // The sheet's labels end at the paper's edge, of which many printers leave the outer sixth of an inch white.
    [Fact]
    public async Task What_should_be_known_of_a_file_names_it()
    {
        Write("layouts/sheets/own.json", """
            { "id": "own", "title": "Own", "paper": { "width": 210, "height": 297 }, "shape": "rectangle", "width": 105, "height": 37,
              "left": 0, "top": 0.5, "columns": 2, "pitchX": 105, "rows": 8, "design": "long", "source": "practice" }
            """);
        var page = await shop.Get("/check");
        Assert.Contains("1 file of the shop's own read with ours; nothing is wrong with it.", page.Seen, StringComparison.Ordinal);
        Assert.Contains("JL338, sheets/own.json", page.Seen, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_page_checks_the_shop_that_is_served_and_no_other_folder()
    {
        Write("other/catalog/grades.json", """[ { "id": 5 } ]""");
        var other = Path.Combine(shop.Folder, "other");
        foreach (var page in (Page[])[await shop.Get($"/check?dir={Uri.EscapeDataString(other)}"), await shop.Fill("/check", ("dir", other), ("do", "show"))])
        {
            Assert.Equal(200, page.Status);
            Assert.Contains("0 files of the shop's own read with ours", page.Seen, StringComparison.Ordinal);
            Assert.DoesNotContain("name=\"dir\"", page.Text, StringComparison.Ordinal);
        }
    }

    private void Write(string name, string text)
    {
        var file = Path.Combine(shop.Folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        File.WriteAllText(file, text);
    }
}
