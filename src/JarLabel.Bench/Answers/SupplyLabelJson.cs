using JarLabel.Bench.Supplies;

namespace JarLabel.Bench.Answers;

/// <summary>A bag's or bottle's label that was written; the rules are null for a bag, which has no hazard.</summary>
internal sealed record SupplyLabelJson(
    string File, string Design, string Sheet, int Position, string Payload, IReadOnlyList<string>? Satisfies, IReadOnlyList<string>? Lacks)
{
    internal static SupplyLabelJson? Of(WrittenSupplyLabel? label) => label is null ? null : new(
        label.File, label.Event.Design, label.Event.Sheet, label.Event.Position, label.Event.Payload, label.Rules?.Satisfies, label.Rules?.Lacks);
}
