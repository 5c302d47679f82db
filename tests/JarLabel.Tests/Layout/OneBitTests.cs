using JarLabel.Tests.Render;

namespace JarLabel.Tests.Layout;

/// <summary>Labels for printers that have black and nothing else: no colours, no greys, nothing thinner than two of their dots.</summary>
public sealed class OneBitTests : IDisposable
{
    private static readonly Lazy<Dictionary<Face, double>> Uprights = new(() => Enum.GetValues<Face>().ToDictionary(face => face, UprightOverSize));

    private readonly ScratchFolder folder = new();
    private readonly SkiaRuler ruler = new();

    public static TheoryData<string, int> Designs() => [.. LayoutFiles.Ours.DesignIds.SelectMany(design => (int[])[203, 300], (design, dpi) => (design, dpi))];

    /// <summary>A wall notice is not printed on a roll.</summary>
    public static TheoryData<string, int> LabelDesigns() => [.. Designs().Where(row => row.Data.Item1 != "notice").Select(row => row.Data)];

    public void Dispose() => folder.Dispose();

    [Theory]
    [MemberData(nameof(Designs))]
    public void A_design_has_black_and_white_on_whole_dots_and_no_line_under_two(string design, int dpi)
    {
        foreach (var (sample, text) in Texts(design, dpi))
        {
            var label = Placed(design, text, dpi);
            Assert.All(label.Marks, mark => Assert.True(InkOf(mark) is Ink.Black or Ink.White, $"{sample}: {mark}"));
            Assert.All(label.Marks.OfType<BarMark>().SelectMany(bar => (double[])[bar.X, bar.Y, bar.Width, bar.Height]), length => Assert.Equal(0, Math.IEEERemainder(length * dpi / 25.4, 1), 0.001));
            Assert.All(label.Marks.OfType<BarMark>(), bar => Assert.True(Math.Min(bar.Width, bar.Height) * dpi / 25.4 > 1.99, $"{sample}: {bar}"));
            Assert.Empty(new Preflight(ruler).Check(label, label.Area.Width, label.Area.Height));
        }
    }

    // On their own rolls. The uprights are measured on letters drawn large; a seventh of a dot is forgiven.
    [Theory]
    [InlineData("roll-50x25")]
    [InlineData("roll-57x32")]
    [InlineData("roll-62x29")]
    [InlineData("roll-62x100")]
    [InlineData("roll-89x36")]
    [InlineData("roll-round-50")]
    [InlineData("roll-101.6x152.4")]
    public void Letters_on_a_roll_have_uprights_of_two_dots(string roll)
    {
        var sheet = LayoutFiles.Sheet(roll);
        var label = Composer.Place(SampleLabels.For(sheet.Design)["typical"], LayoutFiles.Design(sheet.Design), sheet.AreaAt(1), ruler).Require();
        Assert.All(label.Marks.OfType<TextMark>().Where(mark => mark.Ink == Ink.Black), mark =>
            Assert.True(Uprights.Value[mark.Face] * mark.Points * sheet.Dpi / 72 > 1.85, $"{mark}: {Uprights.Value[mark.Face] * mark.Points * sheet.Dpi / 72:0.00} dots"));
    }

    [Fact]
    public void A_word_is_never_given_up_for_a_heavier_weight()
    {
        foreach (var design in LayoutFiles.Ours.DesignIds)
        {
            foreach (var text in Texts(design, 203).Values)
            {
                var own = LayoutFiles.Design(design);
                var colour = Composer.Place(text, own, new LabelArea(own.Shape, 0, 0, own.Width, own.Height, 203), ruler).Require();
                Assert.True(Placed(design, text, 203).Moved.Sum(moved => moved.Texts.Count) <= colour.Moved.Sum(moved => moved.Texts.Count), design);
            }
        }
    }

    // Drawn without smoothing every dot is exactly black or exactly white; so what is grey when it is smoothed is an edge, and no edge has a colour.
    [Theory]
    [MemberData(nameof(Designs))]
    public void Poppler_draws_no_grey_and_no_colour(string design, int dpi)
    {
        var label = Placed(design, Texts(design, dpi)["longest"], dpi);
        Assert.DoesNotContain(Drawn(label, dpi, "-aa", "no", "-aaVector", "no").Values.ToArray(), value => value is > 0 and < 255);
        var smooth = Drawn(label, dpi);
        for (var at = 0; at < smooth.Values.Length; at += 3)
            Assert.True(smooth.Values[at] == smooth.Values[at + 1] && smooth.Values[at] == smooth.Values[at + 2], $"{at / 3 % smooth.Width}, {at / 3 / smooth.Width}");
    }

    // What a square of two dots cannot cover is thinner than two dots. Points of flames and serifs are; whole strokes would be far more.
    [Theory]
    [MemberData(nameof(LabelDesigns))]
    public void Pictograms_and_codes_keep_their_black_when_strokes_under_two_dots_are_taken_away(string design, int dpi)
    {
        var label = Placed(design, Texts(design, dpi)["longest"], dpi);
        var drawn = label with { Marks = [.. label.Marks.Where(mark => mark is not TextMark)] };
        if (!drawn.Marks.Any())
            return;
        using var stream = new MemoryStream();
        PngRenderer.WriteMono(stream, Page(drawn), dpi);
        var picture = Dots.Of(stream.ToArray());
        var (black, thin) = (0, 0);
        for (var y = 0; y < picture.Height; y++)
        {
            for (var x = 0; x < picture.Width; x++)
            {
                black += picture[x, y] ? 1 : 0;
                thin += picture[x, y] && !Covered(picture, x, y) ? 1 : 0;
            }
        }

        Assert.InRange((double)thin / black, 0, 0.01);
    }

    [Fact]
    public void Rolls_are_black_only_and_cut_sheets_are_not()
    {
        var sheets = LayoutFiles.Ours.SheetIds.Select(LayoutFiles.Sheet).ToList();
        Assert.All(sheets, sheet => Assert.Equal(sheet.Id.StartsWith("roll-", StringComparison.Ordinal), sheet.BlackOnly));
        Assert.Equal(7, sheets.Count(sheet => sheet.BlackOnly));
    }

    // At 203 dots to the inch a module of the code has half a millimetre or more: the smaller designs then have room for an address only.
    private static Dictionary<string, LabelText> Texts(string design, int dpi) => SampleLabels.For(design).ToDictionary(
        sample => sample.Key,
        sample => dpi == 203 && design is "small" or "standard" or "wide" ? sample.Value with { Code = "HTTP://192.168.1.20:5080/J/10488-3.12" } : sample.Value);

    private PlacedLabel Placed(string id, LabelText text, int dpi)
    {
        var design = LayoutFiles.Design(id);
        return Composer.Place(text, design, new LabelArea(design.Shape, 0, 0, design.Width, design.Height, dpi) { BlackOnly = true }, ruler).Require();
    }

    private Dots Drawn(PlacedLabel label, int dpi, params string[] options)
    {
        File.WriteAllBytes(folder["label.pdf"], Samples.Pdf(Page(label)));
        OutsideProgram.PdfToPpm.Run([.. options, "-r", dpi.ToString(CultureInfo.InvariantCulture), "-singlefile", folder["label.pdf"], folder["label"]]);
        return Dots.Read(folder["label.ppm"]);
    }

    private static Page Page(PlacedLabel label) => new(label.Area.Width, label.Area.Height, label.Marks);

    // At 72 points and 1000 dots to the inch a dot is a thousandth of the type size.
    private static double UprightOverSize(Face face)
    {
        using var stream = new MemoryStream();
        PngRenderer.WriteMono(stream, new Page(30, 30, [new TextMark("letter", 5, 25, "H", face, 72, Ink.Black)]), 1000);
        var picture = Dots.Of(stream.ToArray());
        var row = (int)(24.0 / 25.4 * 1000);
        return Dots.Runs(picture.Width, x => picture[x, row])[0].Length / 1000.0;
    }

    private static Ink InkOf(Mark mark) => mark switch
    {
        TextMark text => text.Ink,
        BarMark bar => bar.Ink,
        PathMark path => path.Ink,
        _ => Ink.Black,
    };

    private static bool Covered(Dots picture, int x, int y) => Enumerable.Range(0, 4).Any(corner =>
        Enumerable.Range(0, 4).All(dot => picture[x - (corner % 2) + (dot % 2), y - (corner / 2) + (dot / 2)]));
}
