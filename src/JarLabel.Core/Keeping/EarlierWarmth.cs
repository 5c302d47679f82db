using UnitsNet;

namespace JarLabel.Core.Keeping;

/// <summary>How warm a place was before it was made warmer or cooler.</summary>
/// <param name="Until">The first day on which it was so no longer.</param>
/// <param name="Temperature">How warm it was.</param>
public sealed record EarlierWarmth(DateOnly Until, Temperature Temperature);
