namespace JarLabel.Bench.Answers;

/// <summary>What <c>calc solids</c> says; solids are fractions.</summary>
internal sealed record SolidsAnswerJson(double CutPoundsPerGallon, double SolidsByWeight, double SolidsByVolume, double GramsPerLiterOfLiquid, double PoundsPerGallonOfLiquid);
