namespace JarLabel.Bench.Answers;

/// <summary>What <c>sheets</c> says to a program.</summary>
internal sealed record SheetsAnswerJson(IReadOnlyList<SheetJson> Sheets);
