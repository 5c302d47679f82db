using System.Text.Json.Serialization;
using JarLabel.Core.Supplies;

namespace JarLabel.Core.Jars;

/// <summary>Solvent was added. The dates stay: thinning makes nothing younger.</summary>
/// <param name="At">The moment.</param>
/// <param name="Added">What was poured in.</param>
/// <param name="Container">The larger jar it all went into; null when it stayed in its own.</param>
public sealed record Thinned(DateTime At, SolventPart Added, Container? Container = null) : JarEvent(At)
{
    /// <summary>The bottle that the alcohol came from, where that was said.</summary>
    public SupplyNumber? Bottle { get; init; }

    /// <inheritdoc/>
    [JsonIgnore]
    public override bool ChangesContents => true;
}
