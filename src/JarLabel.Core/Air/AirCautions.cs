namespace JarLabel.Core.Air;

/// <summary>What should be known of a room's air before anybody works in it.</summary>
public static class AirCautions
{
    /// <summary>Air that can burn, or that comes nearer to it than fire rules work with; nothing below that.</summary>
    public static IEnumerable<Problem> Of(AirAssessment air) =>
        AirWords.Fire(air) is { } words ? [new("JL160", words, "room")] : [];
}
