using JarLabel.Bench.Labels;

namespace JarLabel.Bench.Answers;

/// <summary>A label that was written.</summary>
internal sealed record LabelJson(
    string File,
    string Design,
    string Sheet,
    int Position,
    string Payload,
    IReadOnlyList<string> Satisfies,
    IReadOnlyList<string> Lacks,
    IReadOnlyList<string> MovedToCard)
{
    internal static LabelJson Of(WrittenLabel label) => new(
        label.File, label.Event.Design, label.Event.Sheet, label.Event.Position, label.Event.Payload, label.Rules.Satisfies, label.Rules.Lacks, label.Rules.MovedToCard);
}
