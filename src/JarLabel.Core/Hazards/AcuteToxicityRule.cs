using JarLabel.Core.Catalog;

namespace JarLabel.Core.Hazards;

/// <summary>Acute toxicity of a mixture by the sum <c>100 / ATEmix = sum of Ci / ATEi</c> (CLP Annex I 3.1.3.6; 29 CFR 1910.1200
/// Appendix A.1.3.6). All in decimal, so that a share exactly on a limit falls on the right side.</summary>
internal static class AcuteToxicityRule
{
    /// <summary>Upper ends of categories 1 to 4; each end belongs to its category (CLP Annex I table 3.1.1).</summary>
    private static readonly Dictionary<Route, decimal[]> UpperEnds = new()
    {
        [Route.Oral] = [5, 50, 300, 2000],
        [Route.Dermal] = [50, 200, 1000, 2000],
        [Route.Vapor] = [0.5m, 2, 10, 20],
    };

    /// <summary>A third of a hundred has no last decimal: what is nearer to a limit than this lies on it.</summary>
    private const decimal Rounding = 1e-20m;

    internal static AcuteToxicityOfMixture Of(Composition mixture, Route route)
    {
        var counted = mixture.Ingredients.Where(i => i.Percent >= MixtureLimits.Relevant).ToArray();
        var unknown = counted.Where(i => i.Substance.UnknownToxicity.Contains(route)).Sum(i => i.Percent);
        var known = unknown > MixtureLimits.MuchUnknown ? 100 - unknown : 100;
        var toxic = counted
            .SelectMany(i => i.Substance.AcuteToxicity.Where(t => t.Route == route), (i, t) => (Ingredient: i, t.Ate))
            .ToArray();
        var sum = toxic.Sum(t => t.Ingredient.Percent / t.Ate);
        return new(route, sum == 0 ? null : known / sum, unknown, FindingFor(route, known, sum, [.. toxic.Select(t => t.Ingredient)]));
    }

    private static Finding? FindingFor(Route route, decimal known, decimal sum, IReadOnlyList<Ingredient> toxic)
    {
        var ends = UpperEnds[route];
        var category = 1 + Array.FindIndex(ends, end => (sum * end) + Rounding >= known);
        return category == 0 || sum == 0 ? null : new($"acute-{Word(route)}-{category}", Why());

        string Why() => $"The acute toxicity estimate {route.Way()} is {Shown.Rounded(known / sum)} {route.Unit()} "
            + $"({Shown.Shares(toxic)}); category {category} goes {From()}up to {Shown.Exact(ends[category - 1])}.";

        string From() => category == 1 ? "" : $"from over {Shown.Exact(ends[category - 2])} ";
    }

    private static string Word(Route route) => route switch { Route.Oral => "oral", Route.Dermal => "dermal", _ => "vapor" };
}
