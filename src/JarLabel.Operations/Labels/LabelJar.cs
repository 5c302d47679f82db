namespace JarLabel.Operations.Labels;

/// <summary>Prints a jar's label again, as the jar is now, and records that it was printed.</summary>
public static class LabelJar
{
    /// <summary>The jar with its new label, or why there is none; then nothing was recorded and nothing written.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="number">The jar.</param>
    /// <param name="choice">Which label.</param>
    /// <param name="file">The file to write; null for the usual place.</param>
    public static Result<JarOutcome> Do(Workbench bench, JarNumber number, LabelChoice choice, string? file)
    {
        return LabelWriter.Open(bench).Then(labels => LedgerAccess.Record(bench, step =>
        {
            var recorder = new Recorder(step, number);
            return recorder.History.Then(history => history.Jar.DemandOnShelf()).Then(_ => recorder.Redate(bench, later: true)).Then(history =>
            {
                var hazards = JarWords.Hazards(bench, history.Jar);
                return labels.Write(recorder, history, hazards, choice, file).Then<JarOutcome>(label => new JarOutcome(history, hazards, label, [.. LabelCautions.Of(history).Concat(history.Jar.StateAt(bench.Now) == JarState.Past ? BatchCautions.OfState(history.Jar, bench.Now) : []).Concat(JarCautions.Of(bench, history.Jar, hazards)).Distinct()]));
            });
        }));
    }
}
