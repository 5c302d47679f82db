namespace JarLabel.Core.Air;

/// <summary>What should be known of a room's air before anybody works in it.</summary>
public static class AirCautions
{
    /// <summary>Air that can burn, or that comes nearer to it than fire rules work with; air that holds more than may be breathed over a shift. Nothing below that.</summary>
    public static IEnumerable<Problem> Of(AirAssessment air) =>
    [
        .. AirWords.Fire(air) is { } fire ? [new("JL160", fire, "room")] : Array.Empty<Problem>(),
        .. AirWords.Breathing(air) is { } breathing ? [new("JL237", breathing, "room")] : Array.Empty<Problem>(),
    ];
}
