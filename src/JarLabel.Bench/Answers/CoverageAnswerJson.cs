namespace JarLabel.Bench.Answers;

/// <summary>What <c>calc coverage</c> says.</summary>
internal sealed record CoverageAnswerJson(double LiquidMilliliters, double DryMicrometersPerCoat, double FlakesGrams);
