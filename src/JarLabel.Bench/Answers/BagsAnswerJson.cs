namespace JarLabel.Bench.Answers;

/// <summary>What <c>bag list</c> says to a program.</summary>
internal sealed record BagsAnswerJson(IReadOnlyList<BagJson> Bags);
