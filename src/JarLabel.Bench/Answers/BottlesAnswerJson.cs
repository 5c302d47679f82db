namespace JarLabel.Bench.Answers;

/// <summary>What <c>bottle list</c> says to a program.</summary>
internal sealed record BottlesAnswerJson(IReadOnlyList<BottleJson> Bottles);
