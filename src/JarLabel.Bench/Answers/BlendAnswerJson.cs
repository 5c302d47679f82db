namespace JarLabel.Bench.Answers;

/// <summary>What <c>calc blend</c> says.</summary>
internal sealed record BlendAnswerJson(double MakesMilliliters, double CutPoundsPerGallon);
