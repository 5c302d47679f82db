using JarLabel.Core.Catalog;
using UnitsNet;

namespace JarLabel.Core.Air;

/// <summary>One substance in the air of a room.</summary>
/// <param name="Substance">What it is.</param>
/// <param name="Vapor">All the vapour it gives.</param>
/// <param name="PeakPpm">The most of it in the air.</param>
/// <param name="Limit">The exposure limit it is held against; null when nobody has published one.</param>
public sealed record VaporPart(Substance Substance, Volume Vapor, double PeakPpm, ExposureLimit? Limit);
