using System.Text.Json.Serialization;
using UnitsNet;

namespace JarLabel.Core.Jars;

/// <summary>Flakes of one grade in a jar.</summary>
/// <param name="Grade">The grade's id.</param>
/// <param name="Weight">Weight, stored in grams.</param>
/// <param name="FlakeDate">When the flakes were made or bought, where known.</param>
public sealed record ResinPart(string Grade, [property: JsonPropertyName("grams")] Mass Weight, DateOnly? FlakeDate = null)
{
    /// <summary>True when a pinch of the bag they came from had dissolved cloudy.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
    public bool Cloudy { get; init; }
}
