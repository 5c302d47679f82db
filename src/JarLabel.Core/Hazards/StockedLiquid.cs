using UnitsNet;

namespace JarLabel.Core.Hazards;

/// <summary>One jar's or bottle's liquid as a store of flammable liquid counts it.</summary>
/// <param name="Hazards">What it is.</param>
/// <param name="Liquid">How much.</param>
/// <param name="Weight">How heavy, flakes and solvent together.</param>
public sealed record StockedLiquid(HazardAssessment Hazards, Volume Liquid, Mass Weight)
{
    /// <summary>True for a bottle of alcohol, false for a jar.</summary>
    public bool IsBottle { get; init; }
}
