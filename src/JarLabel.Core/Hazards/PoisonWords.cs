using JarLabel.Core.Catalog;

namespace JarLabel.Core.Hazards;

/// <summary>The poison wording that US rules want on 4 % of methanol by weight and more, beside the skull and crossbones
/// (27 CFR 20.117, which lifts it below 4 %).</summary>
public static class PoisonWords
{
    /// <summary>Percent of methanol by weight from which the wording is wanted.</summary>
    public const decimal MethanolFrom = 4;

    /// <summary>The words, in the order of a label; the signal word DANGER stands above them.</summary>
    public static IReadOnlyList<string> Words { get; } =
        ["POISON", "Vapor harmful", "May be fatal or cause blindness if swallowed", "Cannot be made nonpoisonous"];

    /// <summary>True when they are wanted.</summary>
    public static bool WantedOn(Composition mixture, RuleSet rules)
    {
        ArgumentNullException.ThrowIfNull(mixture);
        return rules == RuleSet.Osha && mixture.PercentOf(Substance.MethanolId) >= MethanolFrom;
    }
}
