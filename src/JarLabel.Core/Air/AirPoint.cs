using UnitsNet;

namespace JarLabel.Core.Air;

/// <summary>One point of a curve of concentration over time.</summary>
/// <param name="Elapsed">Since the evaporating began.</param>
/// <param name="Ppm">All vapours together, ppm by volume.</param>
public readonly record struct AirPoint(Duration Elapsed, double Ppm);
