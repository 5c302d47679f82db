using JarLabel.Core.Catalog;

namespace JarLabel.Core.Hazards;

/// <summary>The category of a flammable liquid by flash point and boiling point (CLP Annex I table 2.6.1; 29 CFR 1910.1200 Appendix B.6,
/// which has category 4 besides).</summary>
internal static class FlammabilityRule
{
    private const double Category2Below = 23, Category3UpTo = 60, Category4UpTo = 93, Category1BoilsUpTo = 35;

    /// <summary>An estimate this near above 23 °C is not trusted to make a liquid milder.</summary>
    private const double EstimateTrustedAbove = 25;

    /// <summary>A liquid with less of what burns than this, percent by weight, does not sustain a flame.</summary>
    private const decimal LeastThatBurns = 1;

    internal static Finding? Find(Composition mixture, FlashPoint? flash, RuleSet rules)
    {
        var found = flash is not null && BurningPercent(mixture) >= LeastThatBurns ? FindingFor(mixture, flash, rules) : null;
        return found?.ClassId is "flam-1" or "flam-2" ? found : Undeclared(mixture) ?? found;
    }

    private static decimal BurningPercent(Composition mixture) =>
        mixture.Ingredients.Where(i => i.Substance.Flash is not null).Sum(i => i.Percent);

    private static Finding? FindingFor(Composition mixture, FlashPoint flash, RuleSet rules)
    {
        var boils = mixture.Ingredients.Where(i => i.Substance.Flash is not null).Min(i => (double?)i.Substance.Boils?.Value);
        return flash.Celsius switch
        {
            < Category2Below when boils <= Category1BoilsUpTo => new("flam-1", $"{Basis()}; below 23 °C and boiling by 35 °C is category 1."),
            < Category2Below => new("flam-2", $"{Basis()}; below 23 °C is category 2."),
            <= EstimateTrustedAbove when flash.Estimated => new("flam-2", $"{Basis()}; an estimate so near to 23 °C counts as category 2."),
            <= Category3UpTo => new("flam-3", $"{Basis()}; 23 to 60 °C is category 3."),
            <= Category4UpTo when rules == RuleSet.Osha => new("flam-4", $"{Basis()}; over 60 up to 93 °C is category 4."),
            _ => null,
        };

        string Basis() => Capital.Of(flash.Basis);
    }

    private static Finding? Undeclared(Composition mixture) =>
        mixture.Ingredients.FirstOrDefault(i => i.Substance.Undeclared && i.Percent >= LeastThatBurns) is { } share
            ? new("flam-2", $"{Shown.Share(share)} may be anything that burns: the careful answer.")
            : null;
}
