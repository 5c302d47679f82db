using JarLabel.Core.Jars;
using JarLabel.Layout.Rules;

namespace JarLabel.Bench.Labels;

/// <summary>A label as written.</summary>
/// <param name="File">The file's full path.</param>
/// <param name="Event">The fact that the ledger keeps.</param>
/// <param name="Rules">What it meets of the labelling rules, and what moved to the jar card.</param>
public sealed record WrittenLabel(string File, Labelled Event, LabelRuleReport Rules);
