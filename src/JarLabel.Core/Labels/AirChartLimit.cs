namespace JarLabel.Core.Labels;

/// <summary>A line across the chart of a room's air.</summary>
/// <param name="Ppm">Where it lies, ppm by volume, more than 0.</param>
/// <param name="Words">What stands beside it.</param>
/// <param name="Health">True for the exposure limit, false for fractions of the lower explosive limit.</param>
public sealed record AirChartLimit(double Ppm, string Words, bool Health);
