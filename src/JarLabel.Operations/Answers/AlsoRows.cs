namespace JarLabel.Operations.Answers;

/// <summary>What changed with a jar in the same step: other jars, and the bags and bottles that something was put back into.</summary>
internal static class AlsoRows
{
    internal static IEnumerable<(string Name, string? Value)> Of(Workbench bench, JarOutcome outcome) =>
    [
        .. outcome.Also.Select(jar => ($"jar {jar.Number}", (string?)(jar.OnShelf ? $"holds {JarAnswer.Holds(bench, jar)} again" : jar.Gone))),
        .. outcome.PutBack.Select(supply => ($"{supply.Kind.Word()} {supply.Number}", (string?)(supply.OnHand ? $"holds {supply.Standing(bench.Metric)} now" : supply.Standing(bench.Metric)))),
    ];
}
