namespace JarLabel.Operations.Answers;

/// <summary>What the commands about cans say.</summary>
internal static class CanAnswer
{
    internal static Answer Of(Workbench bench, CanOutcome can) => Answer.Of(
        new Screen().Title($"{Capital.Of(can.Solvent.Name)}{(bench.DryRun ? ", not written" : "")}").Gap()
            .Rows(CanWords.Rows(bench, can))
            .Rows((bench.DryRun ? "would be kept in" : "kept in", can.File))
            .Next("mix", ("grade", "garnet"), ("cut", "1.5"), ("pour", "350 mL"), ("solvent", can.Solvent.Id)),
        tell => new CanAnswerJson(CanJson.Of(can), HazardsJson.Of(can.Hazards, bench.Settings.PoisonCenter), can.File, tell(can.Cautions)),
        c => c.CanAnswerJson,
        can.Cautions);

    internal static Answer Of(Workbench bench, IReadOnlyList<CanOutcome> cans)
    {
        var screen = new Screen().Title(cans.Count == 0 ? "This shop has no can of its own yet." : cans.Count == 1 ? "1 can" : $"{cans.Count} cans");
        foreach (var can in cans)
        {
            screen.Gap().Title(Capital.Of(can.Solvent.Name)).Rows(CanWords.Rows(bench, can));
        }

        return Answer.Of(
            screen.Next("can add", ("name", "the green can"), ("contains", "ethanol=30-60, methanol=30-60")),
            new CansAnswerJson([.. cans.Select(CanJson.Of)]),
            c => c.CansAnswerJson);
    }
}
