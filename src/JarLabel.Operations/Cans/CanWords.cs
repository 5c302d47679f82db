namespace JarLabel.Operations.Cans;

/// <summary>What is told of a can, on every surface in the same words.</summary>
public static class CanWords
{
    /// <summary>A longer name has no room on a label.</summary>
    public const int LongestName = 40;

    /// <summary>What it is called in commands, what is in it, and what that means.</summary>
    public static IReadOnlyList<(string, string?)> Rows(Workbench bench, CanOutcome can)
    {
        return
        [
            ("in commands", can.Solvent.Id),
            ("contains", ContentsWords.Of(can.Solvent, can.Hazards)),
            ("says", $"{can.Hazards.SignalText ?? "no signal word"}: {string.Join(" · ", can.Hazards.StatementTexts(bench.Catalog))}"),
            .. ListedRows.Of("doubt", can.Hazards.Doubts),
        ];
    }
}
