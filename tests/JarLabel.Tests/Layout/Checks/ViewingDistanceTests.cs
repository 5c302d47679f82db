namespace JarLabel.Tests.Layout.Checks;

public class ViewingDistanceTests
{
    private static readonly SkiaRuler Ruler = new();
    private static readonly Preflight Preflight = new(Ruler);

    // D = Z h with Z = 57: a sign of 100 mm is told from 5.7 m, and from 3 m it takes 52.6 mm.
    [Theory, Cites(References.Iso3864, "ISO 3864-1 annex A, D = Z h")]
    [InlineData(100, 5.7, true)]
    [InlineData(100, 5.71, false)]
    [InlineData(52.7, 3, true)]
    [InlineData(52.5, 3, false)]
    public void A_sign_is_as_high_as_its_distance_asks(double height, double meters, bool told)
    {
        var sign = new PathMark("signs", 0, 0, height / 100, "M0,0L100,0L100,100L0,100Z", Ink.Red);
        Assert.Equal(told ? [] : ["JL324"], Problems(meters, sign).Select(problem => problem.Code));
    }

    // A warning triangle is 70 mm wide and 61 mm high in its template, a circle 52 mm in the same square: its own height counts, not its frame's.
    [Theory, Cites(References.Iso3864, "ISO 3864-3, templates")]
    [InlineData("W021")]
    [InlineData("W016")]
    public void A_triangle_is_measured_on_its_drawing(string code)
    {
        var outline = JarLabel.Layout.Symbols.Symbol.Find(code)!.Layers[0].Data;
        Assert.NotEmpty(Problems(3, new PathMark("signs", 0, 0, 0.60, outline, Ink.Black)));
        Assert.Empty(Problems(3, new PathMark("signs", 0, 0, 0.61, outline, Ink.Black)));
    }

    // Capitals of 5 mm to the metre, a signal word of 1 to 150. The typeface's capitals are 0.698 of its size: 62 points are 15.27 mm, 88 points 21.67 mm.
    [Theory, Cites(References.AnsiZ535, "Z535.2 annex, letter heights")]
    [InlineData("sentences", 62, 3.05, true)]
    [InlineData("sentences", 62, 3.06, false)]
    [InlineData("danger", 88, 3.25, true)]
    [InlineData("danger", 88, 3.26, false)]
    [InlineData("warning", 88, 3.26, false)]
    [InlineData("duties", 7, 3, true)]
    public void Large_letters_are_as_high_as_their_distance_asks(string box, double points, double meters, bool read) =>
        Assert.Equal(read ? [] : ["JL323"], Problems(meters, new TextMark(box, 10, 50, "H", box == "sentences" ? Face.SemiBold : Face.Bold, points, Ink.Black)).Select(problem => problem.Code));

    [Theory]
    [InlineData("shortest")]
    [InlineData("typical")]
    [InlineData("longest")]
    public void Every_notice_is_read_from_three_metres_on_both_papers(string sample)
    {
        foreach (var sheet in (Sheet[])[LayoutFiles.Sheet("notice-a4"), LayoutFiles.Sheet("notice-letter")])
        {
            var placed = Composer.Place(SampleNotices.All[sample], LayoutFiles.Design("notice"), sheet.AreaAt(1), Ruler).Require();
            Assert.Empty(Preflight.Check(placed, sheet.PaperWidth, sheet.PaperHeight));
            Assert.Empty(Preflight.CheckFrom(placed, Length.FromMeters(3)));
            Assert.NotEmpty(Preflight.CheckFrom(placed, Length.FromMeters(4)));
            Assert.Empty(placed.Moved);
        }
    }

    // ANSI Z535: danger is white on red, warning black on orange. From memory.
    [Theory, Cites(References.AnsiZ535, "panel colours")]
    [InlineData("typical", Ink.Red, Ink.White)]
    [InlineData("shortest", Ink.Orange, Ink.Black)]
    public void The_signal_panel_has_its_colours(string sample, Ink panel, Ink word)
    {
        var sheet = LayoutFiles.Sheet("notice-letter");
        var marks = Composer.Place(SampleNotices.All[sample], LayoutFiles.Design("notice"), sheet.AreaAt(1), Ruler).Require().Marks;
        Assert.Equal(panel, marks.OfType<BarMark>().Last(bar => bar.Box.EndsWith("Panel", StringComparison.Ordinal)).Ink);
        Assert.Equal(word, Assert.Single(marks.OfType<TextMark>(), text => text.Text is "DANGER" or "WARNING").Ink);
    }

    private static IEnumerable<Core.Problem> Problems(double meters, Mark mark)
    {
        var label = new PlacedLabel(LayoutFiles.Design("notice"), new LabelArea(LabelShape.Rectangle, 0, 0, 297, 210, 300), [mark], []);
        return Preflight.CheckFrom(label, Length.FromMeters(meters));
    }
}
