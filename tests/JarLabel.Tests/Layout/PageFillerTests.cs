using JarLabel.Core.Labels;
using JarLabel.Layout;
using JarLabel.Layout.Marks;

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
    public void The_first_label_with_a_problem_stops_the_run_and_is_named()
    {
        var bad = Typical with { Words = new Dictionary<string, IReadOnlyList<string>>(Typical.Words) { ["grade"] = [new string('x', 300)] } };
        var filler = Filler();
        Assert.Empty(filler.Fill([Typical, bad, Typical]).ToList());
        Assert.Equal(1, filler.Placed);
        Assert.Equal("standard/grade", Assert.Single(filler.Problems).Where);
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
