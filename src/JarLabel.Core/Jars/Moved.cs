using System.Text.Json.Serialization;
using JarLabel.Core.Keeping;

namespace JarLabel.Core.Jars;

/// <summary>The jar went to another shelf.</summary>
/// <param name="At">The moment.</param>
/// <param name="Shelf">Where it stands now.</param>
/// <param name="Dates">The dates from then on, where a warmer shelf shortens them; null when they stay.</param>
public sealed record Moved(DateTime At, string Shelf, KeepingDates? Dates = null) : JarEvent(At)
{
    /// <summary>True where the dates on the label are no longer true.</summary>
    [JsonIgnore]
    public override bool ChangesContents => Dates is not null;
}
