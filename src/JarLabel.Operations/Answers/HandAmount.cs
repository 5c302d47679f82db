namespace JarLabel.Operations.Answers;

/// <summary>One amount that the hands pour or weigh in a step, by itself: the largest thing on a page.</summary>
/// <param name="Word">What is done with it: <c>pour first</c>.</param>
/// <param name="Amount">How much, in the shop's own measure: <c>396 mL</c>.</param>
/// <param name="Also">Of what, or the same in another measure.</param>
internal sealed record HandAmount(string Word, string Amount, string Also)
{
    /// <summary>What a step comes to, in the order of the hands; nothing where nothing is poured or weighed.</summary>
    internal static IReadOnlyList<HandAmount> Of(Workbench bench, JarOutcome outcome) => outcome switch
    {
        { Made: { Count: > 0 } made } => [.. made.Select(one => Poured(bench, $"into jar {one.History.Jar.Number}", one.History.Jar.Contents.Liquid))],
        { Step: Mixed mixed } =>
        [
            .. mixed.Contents.Solvents.Select(part => Poured(bench, "pour first", part)),
            .. mixed.Contents.Resins.Select(part => Weighed(bench, "then flakes", part)),
        ],
        { Step: Thinned thinned } => [Poured(bench, "add", thinned.Added)],
        { Step: Thickened thickened } => [Weighed(bench, "add flakes", thickened.Added)],
        { Step: Used used } => [Poured(bench, "take", used.Taken.Liquid)],
        _ => [],
    };

    private static HandAmount Poured(Workbench bench, string word, SolventPart part) => new(
        word,
        bench.Metric ? BenchAmount.Metric(part.Poured) : BenchAmount.Us(part.Poured),
        $"{bench.Catalog.SolventOf(part.Solvent).ShortName}, or weigh {BenchAmount.Metric(part.Weight)}");

    private static HandAmount Poured(Workbench bench, string word, Volume liquid) => bench.Metric
        ? new(word, BenchAmount.Metric(liquid), BenchAmount.Us(liquid))
        : new(word, BenchAmount.Us(liquid), BenchAmount.Metric(liquid));

    private static HandAmount Weighed(Workbench bench, string word, ResinPart part) => new(
        word,
        bench.Metric ? BenchAmount.Metric(part.Weight) : BenchAmount.Us(part.Weight),
        bench.Catalog.GradeOf(part.Grade).Name);
}
