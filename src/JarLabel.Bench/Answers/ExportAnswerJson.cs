namespace JarLabel.Bench.Answers;

/// <summary>What <c>export</c> says to a program.</summary>
internal sealed record ExportAnswerJson(string File, long Events);
