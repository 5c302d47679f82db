namespace JarLabel.Bench.Answers;

/// <summary>What <c>demo</c> says to a program.</summary>
internal sealed record DemoAnswerJson(string Folder, int Jars, IReadOnlyList<string> Files, string Until);
