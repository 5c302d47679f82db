namespace JarLabel.Bench.Answers;

/// <summary>What the commands about sheets in use say to a program.</summary>
internal sealed record SheetsInUseJson(IReadOnlyList<SheetInUseJson> Sheets);
