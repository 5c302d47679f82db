namespace JarLabel.Bench.Answers;

/// <summary>What <c>calc density</c> says.</summary>
internal sealed record DensityAnswerJson(double KilogramsPerCubicMeter, double PoundsPerGallon, double ExpansionPerKelvin);
