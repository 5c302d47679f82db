namespace JarLabel.Core.Keeping;

/// <summary>What a shop holds of how time and warmth act on dissolved shellac.</summary>
/// <param name="FixedQ10">How many times faster it ages, and dissolves, when it is 10 °C warmer, where the shop has settled that: 1.5 to 3. Null leaves
/// it as uncertain as <see cref="Aging"/> says.</param>
public sealed record KeepingSettings(double? FixedQ10)
{
    /// <summary>The lowest Q10 that may be set.</summary>
    public const double LowestQ10 = 1.5;

    /// <summary>The highest Q10 that may be set.</summary>
    public const double HighestQ10 = 3;

    /// <summary>What holds when nothing is set.</summary>
    public static KeepingSettings Usual { get; } = new((double?)null);

    /// <summary>The paces of ageing that are thought possible; one where the shop has settled it.</summary>
    public IReadOnlyList<AgingPace> Paces => FixedQ10 is { } one ? [new(one, 1)] : Aging.Thought;

    /// <summary>Which of <see cref="Paces"/> is the middle one.</summary>
    public int MiddlePace => FixedQ10 is null ? Aging.MiddleOfThought : 0;

    /// <summary>Which of <see cref="Paces"/> no date may outlast.</summary>
    public int LatestPace => FixedQ10 is null ? Aging.ConventionOfThought : 0;

    /// <summary>How much faster flakes dissolve when it is 10 °C warmer.</summary>
    public double DissolvingQ10 => FixedQ10 ?? Aging.Convention;

    /// <summary>How much faster a jar is taken to age when it is 10 °C warmer.</summary>
    public double WarmingQ10 => FixedQ10 ?? Aging.Middle;

    /// <summary>How much longer a jar is taken to keep when it is 10 °C cooler: on the careful side less than it ages faster in warmth.</summary>
    public double CoolingQ10 => FixedQ10 ?? Aging.Convention;
}
