namespace JarLabel.Operations.Steps;

/// <summary>Takes liquid out of a jar for a job.</summary>
internal static class UseStep
{
    private static Input<TakenText> Amount => field ??= Input.Of("volume", "How much", "100 mL", TakenText.Read).In(UsualUnits.Volumes)
        .Help("volume", "How much: \"100 mL\", half, 40 %, or all.").Hint("100 mL, 4 fl oz, half, 40 % or all").Argument().Usual(UsualValues.Parts);

    private static Input<string?> Job => field ??= Shared.Job.Help("text", "What it goes to: \"viola top\".");

    internal static Step Step => field ??= Step.OnJar("use", "Use", "Take liquid out of a jar for a job.", [Amount, Job], Do) with { WorksOut = true, IsAskedFor = (jar, now) => jar.StateAt(now) is JarState.Good || (jar.StateAt(now) is JarState.Test && jar.Test is { Passed: true } test && test.Day == DateOnly.FromDateTime(now)) };

    private static Result<JarOutcome> Do(Values given) =>
        UseJar.Do(given.Bench, Step.Jar(given), given.Get(Amount), given.Get(Job));
}
