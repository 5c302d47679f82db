namespace JarLabel.Tests.Layout;

/// <summary>After blending and thinning a cut is seldom a plain fraction, and its decimals are wide.</summary>
public class OddCutTests
{
    public static TheoryData<string, string> Cases() =>
    [
        .. LayoutFiles.Ours.DesignIds.Where(id => LayoutFiles.Design(id).Voices.Any(voice => voice.Name == "cut"))
            .SelectMany(id => ((string[])["2.1", "0.53", "10⅔"]).Select(cut => (id, cut))),
    ];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Every_design_has_room_for_it_and_it_still_stands_out(string id, string cut)
    {
        var design = LayoutFiles.Design(id);
        var typical = SampleLabels.For(id)["typical"];
        var text = typical with { Words = typical.Words.Append(new("cut", [cut])).GroupBy(word => word.Key).ToDictionary(word => word.Key, word => word.Last().Value) };
        var label = Composer.Place(text, design, new LabelArea(design.Shape, 0, 0, design.Width, design.Height, 300), new SkiaRuler()).Require();
        var words = label.Marks.OfType<TextMark>().Where(mark => mark.Ink != Ink.White).ToArray();
        var figure = words.First(mark => mark.Text == cut.TrimEnd('⅔'));
        Assert.All(words.Where(mark => mark.Box != figure.Box), mark => Assert.True(figure.Points >= 1.5 * mark.Points, $"{mark.Text} {mark.Points} beside {figure.Points}"));
    }

    /// <summary>Rule of the house: tenths of a pound from one on, hundredths below, plain fractions where they are one within half a percent.</summary>
    [Theory]
    [InlineData(2.07, "2.1")]
    [InlineData(0.53, "0.53")]
    [InlineData(1.504, "1½")]
    [InlineData(2.96, "3")]
    [InlineData(7.25, "7¼")]
    public void The_large_figure_has_as_many_figures_as_are_read_across_a_bench(double cut, string figure) => Assert.Equal(figure, VulgarFraction.Brief(cut));
}
