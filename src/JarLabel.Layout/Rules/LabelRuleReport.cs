namespace JarLabel.Layout.Rules;

/// <summary>How one printed label stands against the labelling rules of a region. A jar for one's own use need not meet them all; this says
/// what it does meet.</summary>
/// <param name="Satisfies">Rules whose demands the label meets, each with its paragraph.</param>
/// <param name="Lacks">What a rule asks for and the label does not have, one sentence each.</param>
/// <param name="MovedToCard">Wordings that had no room and stand on the jar card.</param>
public sealed record LabelRuleReport(IReadOnlyList<string> Satisfies, IReadOnlyList<string> Lacks, IReadOnlyList<string> MovedToCard);
