namespace JarLabel.Operations.Answers;

/// <summary>What is said of the shelves.</summary>
internal static class ShelfAnswer
{
    internal static Answer Of(Workbench bench, ShelvesSeen seen) => Answer.Of(
        Show(bench, seen),
        tell => new ShelfAnswerJson(
            [.. seen.List.Jars.Select(j => ShelfJarJson.Of(j, seen.List, bench.Now))],
            seen.List.Jars.Sum(j => j.Liquid.Milliliters),
            [.. seen.Totals.Select(t => new ShelfTotalJson(t.Shelf, t.Jars, t.Liquid.Milliliters, t.Bottles, t.Alcohol.Milliliters))],
            tell(seen.Cautions))
        { Calendar = seen.Calendar, Drawing = seen.Drawing },
        c => c.ShelfAnswerJson,
        seen.Cautions);

    private static Screen Show(Workbench bench, ShelvesSeen seen)
    {
        var jars = seen.List.Jars;
        var total = Volume.FromMilliliters(jars.Sum(j => j.Liquid.Milliliters));
        var screen = new Screen().Title(NothingDue(seen) ? "No jar is due: none is to be tested or used soon." : $"{Capital.Of(ShelfChartText.Shown(jars.Count, seen.Standing))}, {BenchAmount.Both(total, bench.Metric)} of liquid");
        if (jars.Count > 0)
        {
            string[] poison = jars.Any(jar => seen.List.Poisons.Contains(jar.Number)) ? ["poison"] : [];
            screen.Gap().Table(
                ["jar", " cut", "grade", "shelf", " holds", "state", "tested", " use by (estimate)", .. poison],
                [.. jars.Select(j => (string[])[.. Row(bench, j, seen.List), .. poison.Select(_ => seen.List.Poisons.Contains(j.Number) ? PoisonWords.Words[0] : "")])],
                i => StateWords.Style(State(bench, jars[i], seen.List)),
                i => Screen.Step("jar", ("jar", $"{jars[i].Number}")));
        }

        if ((seen.Calendar ?? seen.Drawing) is not null)
        {
            screen.Gap().Rows(("calendar", seen.Calendar), ("drawing", seen.Drawing));
        }

        return (seen.Totals.Count > 1 || seen.Totals.Any(t => t.Bottles > 0) ? screen.Gap().Rows(seen.Totals.Select(t => Total(bench, t))) : screen)
            .Next(jars.Count > 0 ? Screen.Step("jar", ("jar", $"{jars[0].Number}")) : NothingDue(seen) ? Screen.Step("shelf") : JarToName.Mix);
    }

    private static bool NothingDue(ShelvesSeen seen) => seen.DueOnly && seen.List.Jars.Count == 0;

    /// <summary>A shelf and what stands on it altogether.</summary>
    internal static (string, string?) Total(Workbench bench, StandingOnShelf total) =>
        ($"shelf {total.Shelf}", string.Join("; ", ((string?[])
        [
            total.Jars == 0 ? null : $"{CountWords.Of(total.Jars, "jar")}, {BenchAmount.Both(total.Liquid, bench.Metric)}",
            total.Bottles == 0 ? null : $"{CountWords.Of(total.Bottles, "bottle")} of alcohol, {BenchAmount.Both(total.Alcohol, bench.Metric)}",
        ]).OfType<string>()));

    private static string[] Row(Workbench bench, JarEntry jar, ShelfList list) =>
    [
        JarNumber.From(jar.Number).ToString(),
        VulgarFraction.Of(jar.Cut?.PoundsPerUsGallon ?? 0) + " lb",
        jar.Flakes,
        jar.Shelf,
        BenchAmount.Both(jar.Liquid, bench.Metric),
        StateWords.Of(State(bench, jar, list)),
        jar.Test is { } test ? $"{DryingWords.InList(test)} {DateWords.Of(test.Day)}" : "never",
        jar.FailedOn is not null ? "none" : list.UseBy(jar, DateWords.Of),
    ];

    private static JarState State(Workbench bench, JarEntry jar, ShelfList list) => list.StateOf(jar, bench.Now);
}

/// <summary>What <c>shelf</c> says to a program: the jars asked for, their liquid, and what stands on every shelf altogether.</summary>
internal sealed record ShelfAnswerJson(IReadOnlyList<ShelfJarJson> Jars, double TotalMilliliters, IReadOnlyList<ShelfTotalJson> Shelves, IReadOnlyList<Problem> Warnings)
{
    /// <summary>The calendar that was written, if one was.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Calendar { get; init; }

    /// <summary>The drawing that was written, if one was.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Drawing { get; init; }
}

/// <summary>What stands on one shelf.</summary>
internal sealed record ShelfTotalJson(string Shelf, int Jars, double Milliliters, int Bottles, double BottleMilliliters);

/// <summary>A jar's state as one word.</summary>
internal static class StateWords
{
    internal static string Of(JarState state) => state switch
    {
        JarState.Dissolving => "dissolving",
        JarState.Good => "good",
        JarState.Test => "test",
        JarState.Past => "past",
        JarState.TakenBack => "taken back",
        _ => "discarded",
    };

    /// <summary>The style that goes with the word; the word alone says it too.</summary>
    internal static LineStyle Style(JarState state) => state switch
    {
        JarState.Test => LineStyle.Soon,
        JarState.Past or JarState.Discarded or JarState.TakenBack => LineStyle.Over,
        _ => LineStyle.Row,
    };
}
