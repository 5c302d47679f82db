using System.Text.Json.Serialization;

namespace JarLabel.Core.Supplies;

/// <summary>One fact in the life of a bag of flakes or a bottle of alcohol. Facts are only ever added. The family is closed: the ledger
/// keeps each under its name, and an unknown name is a problem.</summary>
/// <param name="At">The moment at the bench, local time.</param>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "event")]
[JsonDerivedType(typeof(BagAdded), nameof(BagAdded))]
[JsonDerivedType(typeof(BottleAdded), nameof(BottleAdded))]
[JsonDerivedType(typeof(FlakesTaken), nameof(FlakesTaken))]
[JsonDerivedType(typeof(SolventTaken), nameof(SolventTaken))]
[JsonDerivedType(typeof(PutBack), nameof(PutBack))]
[JsonDerivedType(typeof(FlakesLeft), nameof(FlakesLeft))]
[JsonDerivedType(typeof(FlakesTested), nameof(FlakesTested))]
[JsonDerivedType(typeof(SolventLeft), nameof(SolventLeft))]
[JsonDerivedType(typeof(BottleMoved), nameof(BottleMoved))]
[JsonDerivedType(typeof(SupplyLabelled), nameof(SupplyLabelled))]
[JsonDerivedType(typeof(SupplyDiscarded), nameof(SupplyDiscarded))]
public abstract record SupplyEvent(DateTime At)
{
    /// <summary>The event's name in the ledger: <c>BagAdded</c>.</summary>
    [JsonIgnore]
    public string Name => GetType().Name;
}
