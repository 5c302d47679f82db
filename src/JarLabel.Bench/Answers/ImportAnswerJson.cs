namespace JarLabel.Bench.Answers;

/// <summary>What <c>import</c> says to a program.</summary>
internal sealed record ImportAnswerJson(long Added, long Known);
