using System.Text.Json.Serialization;

namespace JarLabel.Core.Jars;

/// <summary>The last event that still stood was taken back: the jar is as it was before it. Labels are paper and are not taken back.</summary>
/// <param name="At">The moment.</param>
/// <param name="What">The name of the event that was taken back.</param>
/// <param name="Changes">True when that event had made older labels out of date; those printed since it are now.</param>
public sealed record Undone(DateTime At, string What, bool Changes) : JarEvent(At)
{
    /// <inheritdoc/>
    [JsonIgnore]
    public override bool ChangesContents => Changes;
}
