namespace JarLabel.Core.Hazards;

/// <summary>Reads contents as a data sheet prints them, in percent: <c>ethanol=90,methanol=5,water=5</c>, with ranges
/// <c>ethanol=30-60,methanol=30-60,water=rest</c>.</summary>
public static class ContentsText
{
    /// <summary>Rounded percentages may miss a hundred by this much.</summary>
    private const decimal Slack = 0.05m;

    /// <summary>The one composition that percent by weight say, or every problem in the text; ranges are refused.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="catalog">Where the substances are.</param>
    /// <param name="where">Where it was typed: <c>--contents</c>.</param>
    public static Result<Composition> Parse(string typed, ShopCatalog catalog, string? where = null) =>
        Read(typed, Measure.Weight, catalog, where).Then(stated => stated.InRanges ? HazardProblems.NotAShare(typed, where) : Result<Composition>.Of(Exact(stated, catalog)));

    /// <summary>Everything that percent by weight allow, or every problem in the text.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="catalog">Where the substances are.</param>
    /// <param name="where">Where it was typed: <c>--contents</c>.</param>
    public static Result<IReadOnlyList<Composition>> Possible(string typed, ShopCatalog catalog, string? where = null) =>
        Read(typed, Measure.Weight, catalog, where).Then(stated => Result<IReadOnlyList<Composition>>.Of(stated.InRanges ? catalog.Possible(stated) : [Exact(stated, catalog)]));

    /// <summary>What is stated, or every problem in the text.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="measure">By weight or by volume.</param>
    /// <param name="catalog">Where the substances are.</param>
    /// <param name="where">Where it was typed: <c>--contains</c>.</param>
    public static Result<StatedContents> Read(string typed, Measure measure, ShopCatalog catalog, string? where = null)
    {
        var shares = typed.Split([',', ';'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Select(share => share.Split('=', 2, StringSplitOptions.TrimEntries))
            .Select(halves => (Of: halves[0], Share: halves.ElementAtOrDefault(1) ?? ""))
            .ToArray();
        return shares.Length == 0
            ? HazardProblems.NotAShare(typed, where)
            : Results.All(shares.Select(one => ReadPart(one.Of, one.Share, catalog, where, HazardProblems.NotAShare(one.Share.Length == 0 ? one.Of : $"{one.Of}={one.Share}", where))))
                .Then(parts => Whole(parts, measure, where, [.. Twice(parts).Select(second => HazardProblems.NamedTwice(parts[second].Of, where))]));
    }

    /// <summary>What is stated in rows in which a substance is chosen and its percent typed, or every problem in them, each where it is.</summary>
    /// <param name="rows">The rows.</param>
    /// <param name="measure">By weight or by volume.</param>
    /// <param name="catalog">Where the substances are.</param>
    public static Result<StatedContents> Read(IReadOnlyList<ContentsRow> rows, Measure measure, ShopCatalog catalog) =>
        Results.All(rows.Select(row => ReadPart(row.Of, row.Share, catalog, row.WhereOf, HazardProblems.NotAPercent(row.Share, row.WhereShare)))).Then(parts => Whole(
            parts,
            measure,
            where: null,
            [.. Twice(parts).Select(second => HazardProblems.ChosenTwice(catalog.Substances.Require(parts[second].Of).Name, rows[second].WhereOf))],
            catalog.Substances.Require(Undeclared).Name));

    private const string Undeclared = "unknown";

    private static Result<Part> ReadPart(string of, string share, ShopCatalog catalog, string? where, Problem unread) => ShareText.Read(share) is { } span
        ? catalog.Substances.Named(of, where).Then<Part>(substance => new Part(substance.Id, span.Least, span.Most))
        : unread;

    /// <summary>The places of what stands there a second time.</summary>
    private static IEnumerable<int> Twice(IReadOnlyList<Part> parts) => parts.Index().GroupBy(p => p.Item.Of, p => p.Index).Where(g => g.Count() > 1).Select(g => g.ElementAt(1));

    private static Result<StatedContents> Whole(IReadOnlyList<Part> parts, Measure measure, string? where, IReadOnlyList<Problem> twice, string? undeclared = null)
    {
        Problem[] faults =
        [
            .. twice,
            .. parts.Count(p => p.IsRange) > RangeCorners.MostRanges ? [HazardProblems.TooManyRanges(parts.Count(p => p.IsRange), where, undeclared)] : Array.Empty<Problem>(),
        ];
        if (faults.Length > 0)
        {
            return Result<StatedContents>.Failed(faults);
        }

        var (least, most) = (parts.Sum(p => p.Least), parts.Sum(p => p.Most));
        var slack = least == most ? Slack : 0;
        return least > 100 + slack || most < 100 - slack ? HazardProblems.NotAHundred(least, most, where, undeclared) : StatedContents.Of(measure, parts);
    }

    private static Composition Exact(StatedContents stated, ShopCatalog catalog) =>
        Composition.FromPercentages(stated.Parts.Select(p => new Ingredient(catalog.Substances.Require(p.Of), p.Parts)));
}

/// <summary>A row of a form: a substance that was chosen, and its percent.</summary>
/// <param name="Of">The substance.</param>
/// <param name="Share">Its percent as typed.</param>
/// <param name="WhereOf">Where the substance was chosen.</param>
/// <param name="WhereShare">Where the percent was typed.</param>
public readonly record struct ContentsRow(string Of, string Share, string WhereOf, string WhereShare);
