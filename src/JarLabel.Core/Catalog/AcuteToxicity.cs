using JarLabel.Core.Reading;

namespace JarLabel.Core.Catalog;

/// <summary>The acute toxicity estimate of a substance by one route.</summary>
/// <param name="Route">How it gets in.</param>
/// <param name="Ate">mg/kg for oral and dermal, mg/L for vapour: a measured value or the converted point estimate of its category.</param>
/// <param name="Source">Where it was printed.</param>
public sealed record AcuteToxicity(Route Route, decimal Ate, string Source)
{
    internal static AcuteToxicity Read(FieldReader fields) =>
        new(fields.Choice("route", RouteWords.Choices), fields.Exact("ate", 0.001m, 1_000_000), fields.Text("source"));
}
