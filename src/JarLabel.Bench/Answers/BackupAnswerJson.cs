namespace JarLabel.Bench.Answers;

/// <summary>What <c>backup</c> says to a program.</summary>
internal sealed record BackupAnswerJson(string File, long Events, string Ledger);
