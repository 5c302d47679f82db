namespace JarLabel.Bench.Answers;

/// <summary>What <c>calc thin</c> says.</summary>
internal sealed record ThinAnswerJson(double AddMilliliters, double PartsPerPart, double MakesMilliliters, double CutPoundsPerGallon);
