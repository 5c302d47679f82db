namespace JarLabel.Tests.Hazards.Limits;

/// <summary>A composition beside a limit, and what it is under both rule sets: worked out by hand from the rule that is named, never by the program.</summary>
/// <param name="Contents">Percent by weight; what is missing to a hundred is water.</param>
/// <param name="Clp">Hazard statements under European rules; where two categories share one, with its category: <c>H350/1B</c>.</param>
/// <param name="Osha">The same under US rules.</param>
/// <param name="Rule">The rule, and the sum where there is one.</param>
internal sealed record LimitRow(string Contents, string Clp, string Osha, string Rule)
{
    /// <summary>Rows of a table whose columns stand between bars; a single dash is nothing.</summary>
    internal static IReadOnlyList<LimitRow> Read(string table) =>
    [
        .. table.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Select(line => line.Split('|', StringSplitOptions.TrimEntries))
            .Select(cells => new LimitRow(cells[0], Said(cells[1]), Said(cells[2]), cells[3])),
    ];

    public override string ToString() => $"{Contents} ({Rule})";

    private static string Said(string cell) => cell == "-" ? "" : cell;
}
