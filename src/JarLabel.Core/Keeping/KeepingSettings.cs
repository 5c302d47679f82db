namespace JarLabel.Core.Keeping;

/// <summary>What a shop may set about how time and warmth act on dissolved shellac.</summary>
/// <param name="Q10">How many times faster it ages, and dissolves, when it is 10 °C warmer: 1.5 to 3. No published rate was found;
/// 2 is the convention of chemistry.</param>
public sealed record KeepingSettings(double Q10)
{
    /// <summary>The lowest Q10 that may be set.</summary>
    public const double LowestQ10 = 1.5;

    /// <summary>The highest Q10 that may be set.</summary>
    public const double HighestQ10 = 3;

    /// <summary>What holds when nothing is set.</summary>
    public static KeepingSettings Usual { get; } = new(2);
}
