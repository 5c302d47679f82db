using System.Text.Json.Serialization;
using JarLabel.Core.Keeping;

namespace JarLabel.Core.Jars;

/// <summary>The jar got other dates, because the shop's drying tests say something else of its class than when it was dated. Labels that
/// tell the old ones are out of date.</summary>
/// <param name="At">The moment.</param>
/// <param name="Dates">The dates from then on.</param>
public sealed record Redated(DateTime At, KeepingDates Dates) : JarEvent(At)
{
    /// <inheritdoc/>
    [JsonIgnore]
    public override bool ChangesContents => true;
}
