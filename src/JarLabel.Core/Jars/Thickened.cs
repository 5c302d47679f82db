using System.Text.Json.Serialization;
using JarLabel.Core.Keeping;
using JarLabel.Core.Supplies;

namespace JarLabel.Core.Jars;

/// <summary>Flakes were added.</summary>
/// <param name="At">The moment.</param>
/// <param name="Added">What was put in.</param>
/// <param name="Dates">The jar's dates from then on: ready once the new flakes are dissolved, the rest no later than before.</param>
/// <param name="Container">The larger jar it all went into; null when it stayed in its own.</param>
public sealed record Thickened(DateTime At, ResinPart Added, KeepingDates Dates, Container? Container = null) : JarEvent(At)
{
    /// <summary>The bag that the flakes came from, where that was said.</summary>
    public SupplyNumber? Bag { get; init; }

    /// <inheritdoc/>
    [JsonIgnore]
    public override bool ChangesContents => true;
}
