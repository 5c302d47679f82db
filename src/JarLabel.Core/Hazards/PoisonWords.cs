namespace JarLabel.Core.Hazards;

/// <summary>The poison wording that US rules want on household liquids of 4 % methanol by weight and more: the skull and crossbones, the signal
/// word "danger" and the words below (16 CFR 1500.14(a)(4) and (b)(4)).</summary>
public static class PoisonWords
{
    /// <summary>Percent of methanol by weight from which the wording is wanted.</summary>
    public const decimal MethanolFrom = 4;

    /// <summary>The symbol that stands beside the words, a bare skull and crossbones: no pictogram of the hazard classes, whose own rule stays
    /// as it is.</summary>
    public const string Sign = "SKULL";

    /// <summary>The words, in the order of a label; the signal word DANGER stands above them.</summary>
    public static IReadOnlyList<string> Words { get; } =
        ["POISON", "Vapor harmful", "May be fatal or cause blindness if swallowed", "Cannot be made nonpoisonous"];

    /// <summary>The words as sentences.</summary>
    public static string Text { get; } = string.Join(". ", Words) + ".";

    /// <summary>True when they are wanted on an alcohol, whatever of several it may be.</summary>
    public static bool WantedOn(Solvent solvent, RuleSet rules) => rules == RuleSet.Osha && solvent.Compositions.Any(made => WantedOn(made, rules));

    /// <summary>True when they are wanted.</summary>
    public static bool WantedOn(Composition mixture, RuleSet rules) =>
        rules == RuleSet.Osha && mixture.PercentOf(Substance.MethanolId) >= MethanolFrom;
}
