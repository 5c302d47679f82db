namespace JarLabel.Bench.Answers;

/// <summary>What <c>restore</c> says to a program.</summary>
internal sealed record RestoreAnswerJson(string File, long Events, string Ledger, IReadOnlyList<string> Aside, IReadOnlyList<Core.Problem> Warnings);
