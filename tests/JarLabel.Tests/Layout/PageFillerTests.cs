namespace JarLabel.Tests.Layout;

public class PageFillerTests
{
    private static readonly LabelText Typical = SampleLabels.All["typical"];

    // 21 labels a sheet: from place 20 on, 25 labels take 2 + 21 + 2.
    [Fact]
    public void Labels_run_on_from_the_first_free_place()
    {
        var filler = Filler();
        var codes = filler.Fill(Enumerable.Repeat(Typical, 25), 20).Select(page => page.Marks.OfType<QrMark>().Count());
        Assert.Equal([2, 21, 2], codes);
        Assert.Equal((25, 0), (filler.Placed, filler.Problems.Count));
    }

    [Fact]
    public void Pages_are_made_only_when_asked_for()
    {
        var filler = Filler();
        using var pages = filler.Fill(Enumerable.Repeat(Typical, 1_000_000)).GetEnumerator();
        pages.MoveNext();
        Assert.Equal(21, filler.Placed);
    }

    [Fact]
    public void Labels_with_a_problem_stop_the_run_and_are_all_named()
    {
        var bad = Typical with { Words = new Dictionary<string, IReadOnlyList<string>>(Typical.Words) { ["grade"] = [new string('x', 300)] } };
        var filler = Filler();
        Assert.Empty(filler.Fill([Typical, bad, Typical, bad]).ToList());
        Assert.Equal(1, filler.Placed);
        Assert.Equal(["standard/grade", "standard/grade"], filler.Problems.Select(problem => problem.Where));
    }

    [Fact]
    public void Nobody_reads_more_than_a_screenful_of_problems()
    {
        var bad = Typical with { Words = new Dictionary<string, IReadOnlyList<string>>(Typical.Words) { ["grade"] = [new string('x', 300)] } };
        var filler = Filler();
        Assert.Empty(filler.Fill(Enumerable.Repeat(bad, 1000)).ToList());
        Assert.Equal(PageFiller.MostProblems, filler.Problems.Count);
    }

    // Places 3 and 5 of one sheet, then 1 and 2 of the next: two pages, each label where it was sent.
    [Fact]
    public void Labels_stand_at_the_places_they_were_given()
    {
        (int Page, int Place)[] places = [(7, 3), (7, 5), (8, 1), (8, 2)];
        var pages = Filler().Fill(places.Select(at => new Placement(Typical, at.Page, at.Place, "jar 1-9"))).ToList();
        Assert.Equal([2, 2], pages.Select(page => page.Marks.OfType<QrMark>().Count()));
        var (first, second) = (pages[0].Marks.OfType<QrMark>().ToList(), pages[1].Marks.OfType<QrMark>().ToList());
        Assert.Equal(66.04, first[0].X - first[1].X, 0.1); // place 3 is the third of row one, place 5 the second of row two
        Assert.Equal(38.1, first[1].Y - first[0].Y, 0.1);
        Assert.Equal(66.04, second[1].X - second[0].X, 0.1);
        Assert.Equal(second[0].Y, second[1].Y, 0.001);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(22)]
    public void A_place_that_is_not_on_the_sheet_is_refused(int start)
    {
        var filler = Filler();
        Assert.Empty(filler.Fill([Typical], start));
        Assert.Equal("JL305", Assert.Single(filler.Problems).Code);
    }

    private static PageFiller Filler()
    {
        var ruler = new FakeRuler();
        return new PageFiller(LayoutFiles.Sheet("a4-3x7-63.5x38.1"), LayoutFiles.Design("standard"), new Preflight(ruler), ruler);
    }
}
