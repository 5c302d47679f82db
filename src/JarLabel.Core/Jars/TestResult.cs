namespace JarLabel.Core.Jars;

/// <summary>How a few drops dried on glass.</summary>
/// <param name="Day">The day of the test.</param>
/// <param name="Passed">True when they dried hard.</param>
public sealed record TestResult(DateOnly Day, bool Passed)
{
    /// <summary>True when they dried hard but clearly slower than fresh ones.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
    public bool Slow { get; init; }

    /// <summary>True when it was what the jar was filled from that was tested; only known of a jar as it is, never recorded.</summary>
    [JsonIgnore]
    public bool OfMother { get; init; }

    /// <summary>When, to the minute, where the jar was tested itself; only known of a jar as it is, never recorded.</summary>
    [JsonIgnore]
    public DateTime? At { get; init; }

    /// <summary>The first day on which a passed test counts no longer.</summary>
    [JsonIgnore]
    public DateOnly AgainFrom => Day.AddDays(HoldsDays + 1);

    /// <summary>True for drops that dried hard after a moment, and may be relied on still.</summary>
    public bool Settles(DateTime found, DateOnly today) => HoldsOn(today) && (At ?? Day.ToDateTime(TimeOnly.MinValue)) >= found;

    /// <summary>How long a passed test is taken to hold, in days. A convention on the careful side: shellac goes off slowly, over
    /// months.</summary>
    public const int HoldsDays = 30;

    /// <summary>True while a passed test may be relied on.</summary>
    public bool HoldsOn(DateOnly day) => Passed && day <= Day.AddDays(HoldsDays);

    /// <summary>What holds for a blend: a failure where there was one, else the oldest pass, slow where any was, and nothing when a part was never tested.</summary>
    public static TestResult? OfBlend(IReadOnlyList<TestResult?> parts) =>
        parts.FirstOrDefault(p => p is { Passed: false }) ?? (parts.Contains(null) ? null : parts.MinBy(p => p!.Day)! with { Slow = parts.Any(p => p!.Slow) });
}
