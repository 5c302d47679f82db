namespace JarLabel.Bench.Answers;

/// <summary>A batch to mix, for a program.</summary>
internal sealed record PlanBatchJson(IReadOnlyList<int> Lines, double CutPoundsPerGallon, double PourMilliliters, double FlakesGrams, double MakesMilliliters, string Ready, string UseBy);
