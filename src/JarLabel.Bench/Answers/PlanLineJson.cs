namespace JarLabel.Bench.Answers;

/// <summary>One line of a job, for a program.</summary>
internal sealed record PlanLineJson(string For, double SquareMeters, int Coats, double CutPoundsPerGallon, double AppliedMilliliters, double WasteFraction, double NeededMilliliters, double DryMicrometersPerCoat);
