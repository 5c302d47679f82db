using System.Globalization;
using JarLabel.Core.Catalog;

namespace JarLabel.Core.Hazards;

/// <summary>Reads contents typed as percent by weight: <c>ethanol=90,methanol=5,water=5</c>.</summary>
public static class ContentsText
{
    /// <summary>Rounded percentages may miss a hundred by this much.</summary>
    private const decimal Slack = 0.05m;

    /// <summary>The composition, or every problem in the text.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="catalog">Where the substances are.</param>
    /// <param name="where">Where it was typed: <c>--contents</c>.</param>
    public static Result<Composition> Parse(string typed, ShopCatalog catalog, string? where = null)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(catalog);
        var shares = typed.Split([',', ';'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Select(share => ParseShare(share, catalog, where))
            .ToArray();
        if (shares.Length == 0)
        {
            return HazardProblems.NotAShare(typed, where);
        }

        Problem[] faults = [.. shares.SelectMany(s => s.Problems)];
        return faults.Length > 0 ? Result<Composition>.Failed(faults) : Whole([.. shares.Select(s => s.Require())], where);
    }

    private static Result<Ingredient> ParseShare(string share, ShopCatalog catalog, string? where)
    {
        var halves = share.Split('=', 2, StringSplitOptions.TrimEntries);
        if (halves.Length < 2
            || !decimal.TryParse(halves[1].TrimEnd('%', ' '), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var percent)
            || percent > 100)
        {
            return HazardProblems.NotAShare(share, where);
        }

        return catalog.Substances.Named(halves[0], where).Then<Ingredient>(substance => new Ingredient(substance, percent));
    }

    private static Result<Composition> Whole(IReadOnlyList<Ingredient> shares, string? where)
    {
        var twice = shares.GroupBy(s => s.Substance.Id).Where(g => g.Count() > 1).Select(g => HazardProblems.NamedTwice(g.Key, where)).ToArray();
        if (twice.Length > 0)
        {
            return Result<Composition>.Failed(twice);
        }

        var sum = shares.Sum(s => s.Percent);
        return Math.Abs(100 - sum) > Slack ? HazardProblems.NotAHundred(sum, where) : Composition.FromPercentages(shares);
    }
}
