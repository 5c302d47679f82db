namespace JarLabel.Core.Hazards;

/// <summary>What a shop may choose in classifying its jars.</summary>
/// <param name="CountSelfClassifications">Also count what suppliers commonly say of a substance although no list does, such as eye
/// irritation by ethanol from 50 %. The careful answer, and ours unless told otherwise.</param>
public sealed record HazardSettings(bool CountSelfClassifications)
{
    /// <summary>The more cautious label in every doubt.</summary>
    public static HazardSettings Careful { get; } = new(true);
}
