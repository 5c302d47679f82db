using JarLabel.Layout.Calibration;

namespace JarLabel.Tests.Layout.Calibration;

public class CalibrationTests
{
    // A shift that stays is the paper's offset, one that grows is scaling: 1.6 mm over 228.6 mm are 0.7 %.
    [Theory, CommonPractice]
    [InlineData(0.5, 0.7, 228.6, 0.6, 1)]
    [InlineData(-0.4, -0.4, 228.6, -0.4, 1)]
    [InlineData(0.5, 2.1, 228.6, 0.5, 1.006999)]
    [InlineData(0.5, -1.1, 228.6, 0.5, 0.993001)]
    [InlineData(0.5, 3, 0, 0.5, 1)]
    public void A_growing_shift_is_told_from_a_constant_one(double first, double last, double distance, double shift, double scale)
    {
        var along = ShiftAlong.Of(first, last, distance);
        Assert.Equal(shift, along.Shift, 1e-9);
        Assert.Equal(scale, along.Scale, 1e-6);
    }

    // A printer that prints point p at corner + s (p - corner) + d, the corner being the first label's: each label's middle must come out where it is.
    [Theory]
    [InlineData(0.8, -0.5, 0.995, 1.004)]
    [InlineData(-1.2, 1, 1.02, 0.98)]
    [InlineData(0, 0, 1, 1)]
    public void A_calibrated_sheet_comes_out_in_its_true_places(double dx, double dy, double sx, double sy)
    {
        foreach (var sheet in LayoutFiles.Ours.SheetIds.Select(LayoutFiles.Sheet))
        {
            var told = sheet.For(dx, dy, sx, sy);
            for (var place = 1; place <= sheet.Places; place++)
            {
                var (wanted, given) = (sheet.AreaAt(place), told.AreaAt(place));
                Assert.Equal(wanted.X + (wanted.Width / 2), sheet.Left + dx + (sx * (given.X + (given.Width / 2) - sheet.Left)), 1e-9);
                Assert.Equal(wanted.Y + (wanted.Height / 2), sheet.Top + dy + (sy * (given.Y + (given.Height / 2) - sheet.Top)), 1e-9);
                Assert.Equal((wanted.Width, wanted.Height), (given.Width, given.Height));
            }
        }
    }

    // The roll's paper is its label: the 2 mm of white may hang over the edge, print may not. The sheet's labels begin 3.969 mm from the edge.
    [Theory]
    [InlineData("roll-57x32", 1.9, false)]
    [InlineData("roll-57x32", 2.1, true)]
    [InlineData("letter-2x5-101.6x50.8", 3.9, false)]
    [InlineData("letter-2x5-101.6x50.8", 4.1, true)]
    public void A_calibrated_label_that_leaves_the_paper_is_named(string id, double dx, bool refused)
    {
        var sheet = LayoutFiles.Sheet(id).For(dx, 0, 1, 1);
        var ruler = new SkiaRuler();
        var label = Composer.Place(SampleLabels.All["typical"], LayoutFiles.Design(sheet.Design), sheet.AreaAt(1), ruler).Require();
        var problems = new Preflight(ruler).Check(label, sheet.PaperWidth, sheet.PaperHeight);
        Assert.Equal(refused ? ["JL317"] : [], problems.Select(problem => problem.Code).Distinct());
    }

    public static TheoryData<string> Sheets => [.. LayoutFiles.Ours.SheetIds];

    [Theory, MemberData(nameof(Sheets))]
    public void A_page_is_whole_and_nothing_on_it_runs_into_anything(string id)
    {
        var (sheet, ruler) = (LayoutFiles.Sheet(id), new SkiaRuler());
        var page = new CalibrationPage(sheet, null, ruler).Draw();
        Assert.Equal((sheet.PaperWidth, sheet.PaperHeight), (page.Width, page.Height));
        var area = new LabelArea(LabelShape.Rectangle, 0, 0, page.Width, page.Height, sheet.Dpi);
        var label = new PlacedLabel(LayoutFiles.DesignOf("""{ "kind": "space" }""").Require() with { Inset = 0 }, area, page.Marks, []);
        Assert.DoesNotContain(new Preflight(ruler, QrCheck.Read).Check(label, page.Width, page.Height), problem => problem.Code is not "JL314");
        var bars = page.Marks.OfType<BarMark>().ToList();
        Assert.Contains(bars, bar => bar.Height == 0.25 && bar.Width % 10 == 0 && bar.Width >= 10); // a ruler across
        Assert.Contains(bars, bar => bar.Width == 0.25 && bar.Height % 10 == 0 && bar.Height >= 10); // and one down
    }

    // Whoever looks along a row or a column of crosses must not take a jump from one label's edge to the next label's for a fault of the printer.
    [Theory, MemberData(nameof(Sheets))]
    public void Crosses_stand_in_straight_lines(string id)
    {
        var bars = new CalibrationPage(LayoutFiles.Sheet(id), null, new SkiaRuler()).Draw().Marks.OfType<BarMark>().ToList();
        double[] columns = [.. bars.Where(bar => bar is { Width: 6, Height: 0.25 }).Select(bar => bar.X + 3)];
        double[] rows = [.. bars.Where(bar => bar is { Width: 0.25, Height: 6 }).Select(bar => bar.Y + 3)];
        Assert.Equal(columns.Length, rows.Length);
        foreach (var lines in (double[][])[columns, rows])
        {
            Assert.NotEmpty(lines);
            Assert.All(lines.Order().Zip(lines.Order().Skip(1)), pair => Assert.False(pair.Second - pair.First is > 0.01 and < 5.99, $"{pair.First} and {pair.Second} mm"));
        }
    }

    // A4 takes a ruler of 200 mm both ways; a cross has its middle on the first label's corner, 7.21 and 15.15 mm in.
    [Fact]
    public void A_sheets_page_has_the_long_rulers_the_crosses_and_codes_of_whole_dots()
    {
        var sheet = LayoutFiles.Sheet("a4-3x7-63.5x38.1");
        var page = new CalibrationPage(sheet, "Bench laser", new SkiaRuler()).Draw();
        var bars = page.Marks.OfType<BarMark>().ToList();
        Assert.Contains(bars, bar => bar.Width == 200);
        Assert.Contains(bars, bar => bar.Height == 200);
        Assert.Contains(bars, bar => Math.Abs(bar.X + (bar.Width / 2) - 7.21) < 0.001 && Math.Abs(bar.Y + (bar.Height / 2) - 15.15) < 0.001);
        var codes = page.Marks.OfType<QrMark>().ToList();
        Assert.Equal([3, 4, 5, 6, 8], codes.Select(code => (int)Math.Round(code.Module / 25.4 * 300)));
        Assert.All(codes, code => Assert.Equal(Math.Round(code.Module / 25.4 * 300), code.Module / 25.4 * 300, 1e-6));
        Assert.Equal(codes.Count, codes.Select(code => code.Modules.Payload).Distinct().Count());
        Assert.Contains(page.Marks.OfType<TextMark>(), text => text.Text.Contains("Bench laser", StringComparison.Ordinal));
        Assert.Equal(4, QrEncoder.QuietZone);
    }
}
