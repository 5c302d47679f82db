namespace JarLabel.Bench.Steps;

/// <summary>Every declared step. One is made only when it is asked for.</summary>
internal static class StepTable
{
    private static readonly (string Verb, Func<Step> Step)[] Rows =
    [
        ("thin", () => ThinStep.Step),
        ("thicken", () => ThickenStep.Step),
        ("use", () => UseStep.Step),
        ("note", () => SmallSteps.Note),
        ("move", () => SmallSteps.Move),
        ("discard", () => SmallSteps.Discard),
        ("undo", () => SmallSteps.Undo),
    ];

    /// <summary>All of them.</summary>
    internal static IEnumerable<Step> All => Rows.Select(row => row.Step());

    /// <summary>The step with this verb; null for none.</summary>
    internal static Step? Find(string verb) => Array.Find(Rows, row => row.Verb == verb).Step?.Invoke();
}
