using System.Text.Json.Serialization;
using JarLabel.Core.Keeping;

namespace JarLabel.Core.Jars;

/// <summary>A few drops were let dry on glass.</summary>
/// <param name="At">The moment.</param>
/// <param name="Passed">True when they dried hard.</param>
/// <param name="DryMinutes">How long that took, where somebody looked at the clock.</param>
public sealed record Tested(DateTime At, bool Passed, int? DryMinutes = null) : JarEvent(At)
{
    /// <summary>How they dried, where more was said than whether they did.</summary>
    public Drying? Dried { get; init; }

    /// <summary>What was read at the bench; null when nothing was.</summary>
    public DropReadings? Readings { get; init; }

    /// <summary>How they dried, as far as was said.</summary>
    [JsonIgnore]
    public Drying HowDried => !Passed ? Drying.Soft : Dried ?? Drying.Hard;
}
