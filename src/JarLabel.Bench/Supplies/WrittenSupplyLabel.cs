using JarLabel.Core.Supplies;
using JarLabel.Layout.Rules;

namespace JarLabel.Bench.Supplies;

/// <summary>A bag's or bottle's label as written.</summary>
/// <param name="File">The file's full path.</param>
/// <param name="Event">The fact that the ledger keeps.</param>
/// <param name="Rules">What it meets of the labelling rules; null for a bag, which has no hazard.</param>
public sealed record WrittenSupplyLabel(string File, SupplyLabelled Event, LabelRuleReport? Rules);
