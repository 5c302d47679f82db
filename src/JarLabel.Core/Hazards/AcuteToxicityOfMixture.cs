using JarLabel.Core.Catalog;

namespace JarLabel.Core.Hazards;

/// <summary>What the sum says of one route.</summary>
/// <param name="Route">How it gets in.</param>
/// <param name="Ate">mg/kg, or mg/L for vapour; null when no ingredient counts.</param>
/// <param name="UnknownPercent">The share whose toxicity by this route nobody knows.</param>
/// <param name="Finding">The class it leads to, if any.</param>
internal sealed record AcuteToxicityOfMixture(Route Route, decimal? Ate, decimal UnknownPercent, Finding? Finding);
