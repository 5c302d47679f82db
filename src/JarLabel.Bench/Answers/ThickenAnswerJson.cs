namespace JarLabel.Bench.Answers;

/// <summary>What <c>calc thicken</c> says.</summary>
internal sealed record ThickenAnswerJson(double AddGrams, double MakesMilliliters, double CutPoundsPerGallon);
