using JarLabel.Core.Reading;

namespace JarLabel.Core.Catalog;

/// <summary>How the rule sets are written in data files and on the command line.</summary>
public static class RuleSetWords
{
    /// <summary>Word to rule set.</summary>
    public static IReadOnlyDictionary<string, RuleSet> Choices { get; } =
        new Dictionary<string, RuleSet>(StringComparer.OrdinalIgnoreCase) { ["osha"] = RuleSet.Osha, ["clp"] = RuleSet.Clp };

    /// <summary>The word for a rule set: <c>osha</c> or <c>clp</c>.</summary>
    public static string Word(this RuleSet rules) => rules == RuleSet.Osha ? "osha" : "clp";

    /// <summary>The optional member <c>rules</c>: the one rule set a row is for; left out, the row is for both.</summary>
    internal static RuleSet? OnlyUnder(FieldReader fields) => fields.Has("rules") ? fields.Choice("rules", Choices) : null;
}
