namespace JarLabel.Core.Labels;

/// <summary>Everything that is printed on the drawing of the shelves.</summary>
/// <param name="Title">Whose jars, where.</param>
/// <param name="Summary">How many, how much, on which day.</param>
/// <param name="Counts">How many stand how, the most urgent first.</param>
/// <param name="Rows">The jars, soonest use-by first.</param>
/// <param name="Now">The moment it shows.</param>
/// <param name="Notes">Short lines at the foot.</param>
public sealed record ShelfChartText(
    string Title, string Summary, IReadOnlyList<(JarState State, string Words)> Counts, IReadOnlyList<ShelfChartRow> Rows, DateTime Now, IReadOnlyList<string> Notes)
{
    /// <summary>What stands over the column of dates.</summary>
    public const string UseByHead = "use by (estimate)";

    private static readonly JarState[] Urgent = [JarState.Past, JarState.Test, JarState.Dissolving, JarState.Good];

    /// <summary>The words of the drawing.</summary>
    /// <param name="shop">The shop's name; null where it has none.</param>
    /// <param name="shelf">The shelf shown; null for all.</param>
    /// <param name="rows">The jars shown.</param>
    /// <param name="standing">How many there are to be shown altogether.</param>
    /// <param name="due">True when only those are wanted that are to be tested or past.</param>
    /// <param name="liquid">What the jars shown hold.</param>
    /// <param name="now">The moment.</param>
    /// <param name="metric">Metric amounts first.</param>
    public static ShelfChartText For(
        string? shop, string? shelf, IReadOnlyList<ShelfChartRow> rows, long standing, bool due, Volume liquid, DateTime now, bool metric)
    {
        var where = shelf is null ? "all shelves" : $"shelf {shelf}";
        return new(
            shop is null ? $"Shellac on {where}" : $"{shop}: shellac on {where}",
            $"{Shown(rows.Count, standing)}{(due && rows.Count >= standing ? " to test or past" : "")}, {BenchAmount.Both(liquid, metric)} of liquid, on {DateWords.Of(DateOnly.FromDateTime(now))}",
            [.. Urgent.Select(s => (State: s, Count: rows.Count(r => r.State == s))).Where(c => c.Count > 0).Select(c => (c.State, Say($"{c.Count} {JarStateWords.Of(c.State)}")))],
            rows,
            now,
            ["Use-by dates are estimates; a few drops on glass decide. A drawing stays as it was printed: after mixing, moving, thinning or testing print it again."]);
    }

    /// <summary><c>today 26 Nov 2026</c>.</summary>
    public string Today => $"today {DateWords.Of(DateOnly.FromDateTime(Now))}";

    /// <summary><c>page 2 of 8</c>; nothing where one page holds all.</summary>
    public static string PageOf(int page, int pages) => pages == 1 ? "" : Say($"page {page} of {pages}");

    /// <summary><c>11 jars</c>, or <c>the 40 of 1000 jars that are due soonest</c> where a list was cut short.</summary>
    /// <param name="shown">How many are shown.</param>
    /// <param name="standing">How many there are to be shown altogether.</param>
    public static string Shown(int shown, long standing) =>
        shown < standing ? Say($"the {shown} of {standing} jars that are due soonest") : CountWords.Of(shown, "jar");

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
