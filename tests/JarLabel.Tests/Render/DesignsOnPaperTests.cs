using Page = JarLabel.Layout.Marks.Page;

namespace JarLabel.Tests.Render;

/// <summary>Every design, with the usual and the most to say, as three renderers that share no code draw its PDF at the resolutions that
/// printers have; and as a fourth program reads it back.</summary>
public sealed class DesignsOnPaperTests : IDisposable
{
    private const double Inch = 25.4;
    private const double Point = Inch / 72;

    // A first line is measured by its capitals; in this family an l or a round letter rises over them by up to a twenty-second of the type size.
    private const double Overshoot = 0.045;

    private static readonly string[] Told = ["typical", "longest"];

    private readonly ScratchFolder folder = new();

    /// <summary>Design, sample.</summary>
    public static TheoryData<string, string> Designs() =>
        [.. LayoutFiles.Ours.DesignIds.SelectMany(design => SampleLabels.For(design).Keys.Where(Told.Contains).Select(sample => (design, sample)))];

    /// <summary>Design, sample, dots per inch. The notice has no code, nor have words without one, nor the longest code where it finds no room.</summary>
    public static TheoryData<string, string, int> Codes() =>
        [.. Designs().SelectMany(row => ((int[])[203, 300, 600]).Select(dpi => (row.Data.Item1, row.Data.Item2, dpi))).Where(row => HasCode(row.Item1, row.Item2, row.dpi))];

    public void Dispose() => folder.Dispose();

    [Theory]
    [MemberData(nameof(Codes))]
    public void Two_libraries_read_the_code_from_the_page_as_each_renderer_draws_it(string design, string sample, int dpi)
    {
        var label = Placed(design, sample, dpi);
        var code = Assert.Single(label.Marks.OfType<QrMark>());
        var drawn = Drawn(label);
        Assert.All(drawn, picture => Follows(Dots.Read(picture), code, dpi));
        var payload = code.Modules.Payload.ReplaceLineEndings("\n");
        Assert.All(drawn, picture =>
        {
            Assert.Equal(payload, OutsideProgram.ZbarImg.Run("--quiet", "--raw", "-Sdisable", "-Sqrcode.enable", picture).TrimEnd('\n'));
            Assert.Contains(payload.Replace("\n", "<LF>", StringComparison.Ordinal), OutsideProgram.ZXingReader.Run(picture).Replace("\n", "<LF>", StringComparison.Ordinal), StringComparison.Ordinal);
        });
    }

    [Theory]
    [MemberData(nameof(Designs))]
    public void Text_and_paper_read_back_true_to_a_tenth_of_a_millimetre_and_nothing_leaves_the_safe_part(string design, string sample)
    {
        var label = Placed(design, sample, 300);
        using var document = PdfDocument.Open(Samples.Pdf(Of(label)));
        var page = document.GetPage(1);
        Assert.Equal(label.Area.Width, page.Width * Point, 0.1);
        Assert.Equal(label.Area.Height, page.Height * Point, 0.1);
        var begins = page.Letters.Select(letter => (letter.Value, X: letter.StartBaseLine.X * Point, Y: (page.Height - letter.StartBaseLine.Y) * Point)).ToList();
        Assert.All(label.Marks.OfType<TextMark>().Where(mark => mark.Text.Length > 0), mark =>
            Assert.Contains(begins, letter => Math.Abs(letter.X - mark.X) < 0.1 && Math.Abs(letter.Y - mark.Baseline) < 0.1));
        Assert.All(page.Letters.Where(letter => letter.BoundingBox.Width > 0), letter =>
        {
            var box = letter.BoundingBox;
            var (left, top, right, bottom) = (box.Left * Point, (page.Height - box.Top) * Point, box.Right * Point, (page.Height - box.Bottom) * Point);
            var round = letter.PointSize * Point * Overshoot;
            Assert.True(Safe(label, left, top, round) && Safe(label, right, bottom, round), $"{letter.Value} at {left:0.00}, {top:0.00} to {right:0.00}, {bottom:0.00} mm leaves the safe part.");
        });
    }

    [Fact]
    public void Every_design_for_a_jar_a_bag_or_a_bottle_has_room_for_the_usual_code() => Assert.All(
        LayoutFiles.Ours.DesignIds.Where(design => design != "notice"),
        design => Assert.Equal(((int[])[203, 300, 600]).Length, Codes().Count(row => row.Data.Item1 == design && row.Data.Item2 == "typical")));

    private static bool HasCode(string design, string sample, int dpi) => Tried(design, sample, dpi).TryGet(out var label, out _) && label.Marks.OfType<QrMark>().Any();

    private static PlacedLabel Placed(string design, string sample, int dpi) => Tried(design, sample, dpi).Require();

    private static Result<PlacedLabel> Tried(string id, string sample, int dpi)
    {
        var design = LayoutFiles.Design(id);
        return Composer.Place(SampleLabels.For(id)[sample], design, new LabelArea(design.Shape, 0, 0, design.Width, design.Height, dpi), new SkiaRuler());
    }

    private static Page Of(PlacedLabel label) => new(label.Area.Width, label.Area.Height, label.Marks);

    // On a round label the safe part is a circle.
    private static bool Safe(PlacedLabel label, double x, double y, double round)
    {
        const double closeness = 0.1;
        var (area, inset) = (label.Area, label.Design.Inset - closeness - round);
        return area.Shape == LabelShape.Round
            ? Math.Sqrt(Math.Pow(x - (area.Width / 2), 2) + Math.Pow(y - (area.Height / 2), 2)) <= (area.Width / 2) - inset
            : x >= inset && y >= inset && x <= area.Width - inset && y <= area.Height - inset;
    }

    private string[] Drawn(PlacedLabel label)
    {
        var pdf = folder["label.pdf"];
        File.WriteAllBytes(pdf, Samples.Pdf(Of(label)));
        var dpi = label.Area.Dpi.ToString(CultureInfo.InvariantCulture);
        OutsideProgram.PdfToPpm.Run("-r", dpi, "-gray", "-singlefile", pdf, folder["poppler"]);
        OutsideProgram.MuTool.Run("draw", "-q", "-r", dpi, "-c", "gray", "-o", folder["mupdf.pgm"], pdf, "1");
        OutsideProgram.Ghostscript.Run("-q", "-dBATCH", "-dNOPAUSE", "-dSAFER", "-sDEVICE=pgmraw", $"-r{dpi}", $"-sOutputFile={folder["gs.pgm"]}", pdf);
        return [folder["poppler.pgm"], folder["mupdf.pgm"], folder["gs.pgm"]];
    }

    /// <summary>Every run of dark modules, row by row, is as long as its modules to within one printer dot, and stands where it should.</summary>
    private static void Follows(Dots page, QrMark code, int dpi)
    {
        double At(double modules, double from) => (from + (modules * code.Module)) * dpi / Inch;
        var size = code.Modules.Size;
        var left = (int)Math.Round(At(0, code.X)) - 1;
        var width = (int)Math.Round(At(size, code.X)) + 1 - left;
        for (var row = 0; row < size; row++)
        {
            var y = (int)At(row + 0.5, code.Y);
            var found = Dots.Runs(width, x => page[left + x, y]);
            var wanted = Dots.Runs(size, column => code.Modules[row, column]);
            Assert.Equal(wanted.Count, found.Count);
            foreach (var ((from, length), dots) in wanted.Zip(found))
            {
                Assert.InRange(dots.Length, (length * code.Module * dpi / Inch) - 1.01, (length * code.Module * dpi / Inch) + 1.01);
                Assert.InRange(dots.From + left, At(from, code.X) - 1.01, At(from, code.X) + 1.01);
            }
        }
    }
}
