using System.Xml.Linq;

namespace JarLabel.Tests.Render;

public sealed class SvgRendererTests : IDisposable
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";
    private readonly ScratchFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void It_is_a_picture_in_millimetres()
    {
        var root = XDocument.Parse(Text(Samples.Label())).Root!;
        Assert.Equal(Svg + "svg", root.Name);
        Assert.Equal(("101.6mm", "50.8mm", "0 0 101.6 50.8"), ((string)root.Attribute("width")!, (string)root.Attribute("height")!, (string)root.Attribute("viewBox")!));
    }

    [Fact]
    public void Letters_are_outlines_so_that_no_font_is_needed()
    {
        var root = XDocument.Parse(Text(Samples.Label())).Root!;
        Assert.Empty(root.Descendants(Svg + "text"));
        var outlines = root.Descendants(Svg + "path").Select(path => (string?)path.Attribute("id")).ToHashSet();
        Assert.All(root.Descendants(Svg + "use"), use => Assert.Contains(((string)use.Attribute("href")!)[1..], outlines));
    }

    [Theory]
    [InlineData("cut <3 & \"thin\" it's")]
    [InlineData("1½ lb ≈ 25 µm")]
    public void The_words_stand_beside_the_outlines(string text)
    {
        var root = XDocument.Parse(Text(Samples.TextOnly(text))).Root!;
        Assert.Equal(text, (string)Assert.Single(root.Descendants(Svg + "g")).Attribute("aria-label")!);
    }

    [Theory]
    [InlineData(Samples.Payload)]
    [InlineData("garnet, 1½ lb cut, mixed 9 Mar 2026, use by ≈ 9 Nov 2026, flammable, jar 142-5")]
    public void The_codes_outline_covers_the_dark_modules_and_no_others(string payload)
    {
        var modules = Samples.Code(payload);
        var page = new Page(60, 60, [new QrMark("code", 5, 5, 0.5, modules)]);
        var data = (string)Assert.Single(XDocument.Parse(Text(page)).Root!.Elements(Svg + "path")).Attribute("d")!;
        using var outline = SKPath.ParseSvgPathData(data);
        outline.FillType = SKPathFillType.EvenOdd;
        for (var i = 0; i < modules.Size * modules.Size; i++)
            Assert.Equal(modules[i / modules.Size, i % modules.Size], outline.Contains((i % modules.Size) + 0.5f, (i / modules.Size) + 0.5f));
    }

    [Fact]
    public void The_same_page_gives_the_same_text_whatever_the_culture()
    {
        var before = CultureInfo.CurrentCulture;
        var plain = Text(Samples.Label());
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("") { NumberFormat = { NumberDecimalSeparator = ",", NegativeSign = "~" } };
            Assert.Equal(plain, Text(Samples.Label()));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Zbar_reads_the_code_from_the_picture_as_mupdf_draws_it()
    {
        File.WriteAllText(folder["label.svg"], Text(Samples.Label()));
        OutsideProgram.MuTool.Run("draw", "-q", "-r", "300", "-o", folder["label.png"], folder["label.svg"]);
        Assert.Equal(Samples.Payload, OutsideProgram.ZbarImg.Run("--quiet", "--raw", folder["label.png"]).Trim());
    }

    private static string Text(Page page)
    {
        using var stream = new MemoryStream();
        SvgRenderer.Write(stream, page);
        return System.Text.Encoding.UTF8.GetString(stream.ToArray());
    }
}
