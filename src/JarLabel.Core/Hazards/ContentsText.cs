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
            .Select(halves => (halves[0], halves.ElementAtOrDefault(1) ?? "", where))
            .ToArray();
        return shares.Length == 0 ? HazardProblems.NotAShare(typed, where) : Read(shares, measure, catalog, where);
    }

    /// <summary>What is stated in rows of a substance and its percent, or every problem in them.</summary>
    /// <param name="rows">The substance as typed, its share as typed, and where that was.</param>
    /// <param name="measure">By weight or by volume.</param>
    /// <param name="catalog">Where the substances are.</param>
    /// <param name="where">Where they were typed as a whole.</param>
    public static Result<StatedContents> Read(
        IEnumerable<(string Of, string Share, string? Where)> rows, Measure measure, ShopCatalog catalog, string? where)
    {
        Result<Part>[] parts = [.. rows.Select(row => ReadPart(row.Of, row.Share, catalog, row.Where))];
        Problem[] faults = [.. parts.SelectMany(p => p.Problems)];
        return faults.Length > 0 ? Result<StatedContents>.Failed(faults) : Whole([.. parts.Select(p => p.Require())], measure, where);
    }

    private static Result<Part> ReadPart(string of, string share, ShopCatalog catalog, string? where) => ShareText.Read(share) is { } span
        ? catalog.Substances.Named(of, where).Then<Part>(substance => new Part(substance.Id, span.Least, span.Most))
        : HazardProblems.NotAShare(share.Length == 0 ? of : $"{of}={share}", where);

    private static Result<StatedContents> Whole(IReadOnlyList<Part> parts, Measure measure, string? where)
    {
        Problem[] faults =
        [
            .. parts.GroupBy(p => p.Of).Where(g => g.Count() > 1).Select(g => HazardProblems.NamedTwice(g.Key, where)),
            .. parts.Count(p => p.IsRange) > RangeCorners.MostRanges ? [HazardProblems.TooManyRanges(parts.Count(p => p.IsRange), where)] : Array.Empty<Problem>(),
        ];
        if (faults.Length > 0)
        {
            return Result<StatedContents>.Failed(faults);
        }

        var (least, most) = (parts.Sum(p => p.Least), parts.Sum(p => p.Most));
        var slack = least == most ? Slack : 0;
        return least > 100 + slack || most < 100 - slack ? HazardProblems.NotAHundred(least, most, where) : StatedContents.Of(measure, parts);
    }

    private static Composition Exact(StatedContents stated, ShopCatalog catalog) =>
        Composition.FromPercentages(stated.Parts.Select(p => new Ingredient(catalog.Substances.Require(p.Of), p.Parts)));
}
