namespace JarLabel.Core.Labels;

/// <summary>The tables of a jar's label and card.</summary>
public static class JarTables
{
    /// <summary>The cuts that jobs ask for: wash coat, sealer, padding, bodying, build. Common practice.</summary>
    private static readonly double[] CommonCuts = [0.5, 1, 1.5, 2, 3];

    /// <summary>Word and date, the most important first. Where a drying test failed, or the jar is in doubt, that stands in the place of the use-by, and no date promises
    /// anything.</summary>
    internal static IReadOnlyList<IReadOnlyList<string>> Dates(Jar jar) => FailureWords.Table(jar) is { Length: > 0 } against
        ?
        [
            ["mixed", DateWords.Of(DateOnly.FromDateTime(jar.MixedAt))],
            .. against,
            .. Changed(jar),
        ]
        :
        [
            ["mixed", DateWords.Of(DateOnly.FromDateTime(jar.MixedAt))],
            ["use by ≈", DateWords.Of(jar.Dates.UseBy)],
            .. Changed(jar),
            ["test from ≈", DateWords.Of(jar.TestFrom)],
            .. Ready(jar),
        ];

    /// <summary>What is in it: name, metric, US, weight.</summary>
    internal static IReadOnlyList<IReadOnlyList<string>> Batch(Jar jar) => jar.Contents.Recipe is not { } recipe
        ? []
        :
        [
            ["alcohol, first", BenchAmount.Metric(recipe.Pour), BenchAmount.Us(recipe.Pour), BenchAmount.Metric(recipe.PourWeight)],
            ["flakes, then", "", BenchAmount.Us(recipe.Flakes), BenchAmount.Metric(recipe.Flakes)],
            ["makes", BenchAmount.Metric(recipe.Makes), BenchAmount.Us(recipe.Makes), BenchAmount.Metric(recipe.MakesWeight)],
        ];

    /// <summary>What to add to come to the common weaker cuts, under a line that names the columns; empty when there is none weaker.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Thinning(Jar jar) => (jar ?? throw new ArgumentNullException(nameof(jar))).Contents.Cut is not { } from
        ? []
        : Headed([.. CommonCuts.Where(c => c < from.PoundsPerUsGallon * 0.97).Select(c => Thin(from, PoundCut.FromPoundsPerUsGallon(c), jar.Contents.Liquid))]);

    /// <summary>Day and what happened.</summary>
    internal static IReadOnlyList<IReadOnlyList<string>> History(IReadOnlyList<JarEvent> events) =>
        [.. HistoryWords.All(events).Select(row => (IReadOnlyList<string>)[row.Day, row.What])];

    private static IReadOnlyList<IReadOnlyList<string>> Headed(IReadOnlyList<IReadOnlyList<string>> rows) =>
        rows.Count == 0 ? [] : [["to cut", "add to 100 mL", "add to this jar"], .. rows];

    private static string[][] Changed(Jar jar) => jar.Changed is { } changed ? [[changed.Word, DateWords.Of(DateOnly.FromDateTime(changed.At))]] : [];

    /// <summary>When it was ready is of no use on a jar that was changed later.</summary>
    private static string[][] Ready(Jar jar) => jar.Changed?.At > jar.Dates.Ready ? [] : [["ready ≈", DateWords.Of(jar.Dates.Ready)]];

    private static IReadOnlyList<string> Thin(PoundCut from, PoundCut to, Volume liquid)
    {
        var all = Mixing.Thinning.Solve(from, to, liquid).Require();
        return [CutWords.Of(to), BenchAmount.Metric(Volume.FromMilliliters(100 * all.PartsPerPart)), BenchAmount.Both(all.Add)];
    }
}
