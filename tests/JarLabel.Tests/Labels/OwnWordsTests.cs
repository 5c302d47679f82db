using JarLabel.Operations.Labels.Many;
using JarLabel.Operations.Typing;

namespace JarLabel.Tests.Labels;

/// <summary>People's own words that the label typeface cannot draw: none come in any more, and those on record block no label.</summary>
public sealed class OwnWordsTests : IDisposable
{
    private const string Odd = "\u0441\u043a\u0440\u0438\u043f\u043a\u0430 \U0001F600";

    private readonly ScratchFolder scratch = new();

    public void Dispose() => scratch.Dispose();

    [Theory]
    [InlineData("viola top", true)]
    [InlineData("F\u00fcllung f\u00fcr N\u00ba 7 \u2014 \u0161\u010d\u0159, \u00bd lb", true)]
    [InlineData(Odd, false)]
    [InlineData("viola \U0001F3BB", false)]
    public void What_is_typed_is_taken_when_every_weight_can_draw_it(string text, bool taken)
    {
        var read = ValueReader.PrintedUpTo(120)(text, "job");
        Assert.Equal(taken, read.Ok);
        Assert.Equal(taken ? [] : ["JL312"], read.Problems.Select(problem => problem.Code));
        Assert.Equal(taken, Enum.GetValues<Face>().All(face => new SkiaRuler().FirstMissing(text, face) is null));
    }

    // Seven letters and a face: eight signs stand for them, and the blank between stays.
    [Fact]
    public void Words_on_record_are_printed_with_a_sign_for_each_letter_and_told()
    {
        var bench = Workbench.Open(new WorkbenchOptions(scratch["shop"], new DateTime(2026, 3, 9, 10, 0, 0)), _ => null).Require();
        MixJar.Do(bench, new MixRequest(
            bench.Catalog.Grades.Named("garnet").Require(),
            bench.Catalog.Solvents.Named("ethanol-95").Require(),
            new BatchRequest(CutText.Read("2", "").Require(), VolumeText.Read("350 mL", "").Require()),
            new Container(ContainerMaterial.Glass, Volume.FromMilliliters(1000)),
            Job: Odd,
            Label: null)).Require();
        var used = UseJar.Do(bench, JarNumber.From(1), Volume.FromMilliliters(10), Odd).Require();
        var text = JarWords.Of(bench, used.History, used.Hazards);
        Assert.Equal("??????? ?", text.Words["job"][0]);
        Assert.Equal("used 10 mL: ??????? ?", text.Tables["history"][1][1]);
        Assert.Equal(Odd, used.History.Jar.Job);

        var card = new LabelChoice("card", "card-a6");
        Assert.Equal(["JL363", "JL176"], LabelJar.Do(bench, JarNumber.From(1), card, null).Require().Cautions.Select(caution => caution.Code));
        var many = LabelJars.Do(bench, new JarsWanted([], All: true), card with { Copies = 2 }, null).Require();
        Assert.Contains("jar 1-9", Assert.Single(many.Cautions).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Words_that_can_be_drawn_are_left_as_they_are()
    {
        var text = Layout.SampleLabels.All["longest"];
        Assert.Equal(text.Words, OwnWords.Drawn(text, new SkiaRuler()).Words);
    }
}
