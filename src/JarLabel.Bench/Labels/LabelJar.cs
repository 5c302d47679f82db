using JarLabel.Bench.Recording;
using JarLabel.Core;
using JarLabel.Core.Jars;

namespace JarLabel.Bench.Labels;

/// <summary>Prints a jar's label again, as the jar is now, and records that it was printed.</summary>
public static class LabelJar
{
    /// <summary>The jar with its new label, or why there is none; then nothing was recorded and nothing written.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="number">The jar.</param>
    /// <param name="choice">Which label.</param>
    /// <param name="file">The file to write; null for the usual place.</param>
    public static Result<BenchOutcome> Do(Workbench bench, JarNumber number, LabelChoice choice, string? file)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return LabelWriter.Open(bench).Then(labels => LedgerDesk.Record(bench, step =>
        {
            var recorder = new Recorder(step, number);
            return recorder.History.Then(history => history.Jar.DemandOnShelf()).Then(_ => recorder.Redate(bench, later: true)).Then(history =>
            {
                var hazards = JarWords.Hazards(bench, history.Jar);
                return labels.Write(recorder, history, hazards, choice, file).Then<BenchOutcome>(label => new BenchOutcome(history, hazards, label, LabelCautions.Of(history)));
            });
        }));
    }
}
