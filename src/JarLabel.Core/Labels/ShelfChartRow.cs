namespace JarLabel.Core.Labels;

/// <summary>One jar on the drawing of the shelves: its words and its days.</summary>
/// <param name="Number">Its number with check digit.</param>
/// <param name="What">Its cut, flakes and alcohol.</param>
/// <param name="Stands">How it stands, where, and what is in it.</param>
/// <param name="UseBy">Its estimated use-by in words.</param>
/// <param name="Next">The next thing to know of it.</param>
/// <param name="State">How it stands.</param>
/// <param name="Days">Its days.</param>
public sealed record ShelfChartRow(string Number, string What, string Stands, string UseBy, string Next, JarState State, ShelfChartDays Days)
{
    /// <summary>The row of a jar that stands on a shelf.</summary>
    /// <param name="jar">The jar, with the dates that the shop's tests say now where they are others.</param>
    /// <param name="tests">Its tests that stand, in any order.</param>
    /// <param name="catalog">Names.</param>
    /// <param name="now">The moment.</param>
    /// <param name="metric">Metric amounts first.</param>
    /// <param name="labelled">True when it has a label.</param>
    public static ShelfChartRow Of(Jar jar, IEnumerable<TestResult> tests, ShopCatalog catalog, DateTime now, bool metric, bool labelled)
    {
        var dates = jar.Learned is { } learned ? jar.Dates.Shortest(learned) : jar.Dates;
        var state = jar.StateAt(now);
        var testFrom = dates.TestFrom < jar.TestFrom ? dates.TestFrom : jar.TestFrom;
        TestResult[] shown = [.. tests.OrderBy(t => t.Day)];
        if (jar.Test is { Passed: false, OfMother: true } before)
        {
            shown = [before with { Day = before.Day < DateOnly.FromDateTime(jar.MixedAt) ? DateOnly.FromDateTime(jar.MixedAt) : before.Day }, .. shown];
        }

        var days = new ShelfChartDays(jar.MixedAt, dates.Ready, testFrom, dates.UseBy, shown);
        return new(
            jar.Number.ToString(),
            $"{VulgarFraction.Of(jar.Contents.Cut?.PoundsPerUsGallon ?? 0)} lb {GradeWords.Names(jar.Held, catalog)} in {GradeWords.Solvents(jar.Held, catalog)}",
            $"{Stand(jar, state)}, {jar.Shelf}, {BenchAmount.Both(Volume.FromMilliliters(jar.Contents.Liquid.Milliliters), metric)}",
            jar.FailedOn is null ? DateWords.Estimate(dates.UseBy) : FailureWords.Failed,
            Follows(jar, testFrom, state, labelled),
            state,
            days);
    }

    private static string Stand(Jar jar, JarState state) => state == JarState.Past && jar.Test is { Passed: false } ? "failed its test" : JarStateWords.Of(state);

    /// <summary>A label that is wrong comes before everything else, then a failure, then what is to be done or was done last.</summary>
    private static string Follows(Jar jar, DateOnly testFrom, JarState state, bool labelled) => (jar, state) switch
    {
        ({ Learned: not null }, _) => labelled ? "label out of date" : "moved by tests",
        ({ Test: { Passed: false, Day: var day } }, _) => $"failed {DateWords.Of(day)}",
        (_, JarState.Past) => "past since then",
        (_, JarState.Dissolving) => $"ready ≈ {jar.Dates.Ready.ToString("d MMM, HH:mm", CultureInfo.InvariantCulture)}",
        (_, JarState.Test) => "a few drops on glass",
        ({ Test: { } test }, _) => $"{DryingWords.InList(test)} {DateWords.Of(test.Day)}",
        _ => $"test from {DateWords.Of(testFrom)}",
    };
}

/// <summary>How a jar stands, in a word or two, as pages and drawings say it beside a shape.</summary>
public static class JarStateWords
{
    /// <summary><c>test first</c>.</summary>
    public static string Of(JarState state) => state switch
    {
        JarState.Dissolving => "still dissolving",
        JarState.Good => "good",
        JarState.Test => "test first",
        JarState.Past => "past",
        _ => "gone",
    };
}

/// <summary>The days of a jar's life, as they are drawn.</summary>
/// <param name="Mixed">When it was mixed.</param>
/// <param name="Ready">When the flakes should be dissolved.</param>
/// <param name="TestFrom">From this day a drop is tried before use.</param>
/// <param name="UseBy">Expected to dry hard until this day.</param>
/// <param name="Tests">Its tests, the oldest first.</param>
public sealed record ShelfChartDays(DateTime Mixed, DateTime Ready, DateOnly TestFrom, DateOnly UseBy, IReadOnlyList<TestResult> Tests)
{
    /// <summary>True when the last test failed: then there is no use-by.</summary>
    public bool Failed => Tests is [.., { Passed: false }];

    /// <summary>The day it stopped drying hard as far as is known: the last test, where that failed; else the use-by.</summary>
    public DateOnly Ends => Tests is [.., { Passed: false } last] && last.Day < UseBy ? last.Day : UseBy;
}
