using JarLabel.Bench.Keeping;
using JarLabel.Bench.Labels;
using JarLabel.Bench.Notices;
using JarLabel.Bench.Recording;
using JarLabel.Bench.Supplies;
using JarLabel.Core;
using JarLabel.Core.Jars;

namespace JarLabel.Bench.Changing;

/// <summary>The end of every step at the bench: the jar's hazards as it is then, its cautions, and its label where the old one is no longer
/// true.</summary>
internal sealed class Finish(Workbench bench, LabelWriter labels)
{
    internal static Result<Finish> Open(Workbench bench) => LabelWriter.Open(bench).Then<Finish>(labels => new Finish(bench, labels));

    /// <summary>Adds the event and ends the step for its jar.</summary>
    /// <param name="recorder">The jar.</param>
    /// <param name="happened">The event.</param>
    /// <param name="choice">The label wanted where one is due; null for none.</param>
    /// <param name="first">Cautions from before the event.</param>
    internal Result<BenchOutcome> Record(Recorder recorder, JarEvent happened, LabelChoice? choice, IReadOnlyList<Problem>? first = null) =>
        Drawing.Take(recorder.Step, recorder.Jar, happened).Then(_ => recorder.Append(happened)).Then(history => LearnedDates.Mark(bench, recorder.Step, history)).Then(history =>
        {
            var hazards = JarWords.Hazards(bench, history.Jar);
            var plain = new BenchOutcome(history, hazards, null, [.. bench.ClockBehind is { } clock ? [clock] : (Problem[])[], .. first ?? [], .. JarCautions.Of(bench, history.Jar, hazards), .. LearnedDates.Cautions(history.Jar, history.IsLabelled), .. TestCautions.Of(history, happened)]) { Step = happened };
            var outcome = happened is IBeginning or Thinned or Moved
                ? plain with { Cautions = [.. plain.Cautions, .. ShelfCautions.With(bench, recorder.Step, plain)] }
                : plain;
            return choice is not null && (happened.ChangesContents || recorder.Redated) && history.Jar.OnShelf
                ? labels.Write(recorder, history, hazards, choice).Then<BenchOutcome>(label => outcome with { Label = label, Cautions = [.. outcome.Cautions, .. LabelCautions.Of(history)] })
                : outcome;
        });
}
