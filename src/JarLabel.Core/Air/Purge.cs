namespace JarLabel.Core.Air;

/// <summary>Airing a room: how long for how much.</summary>
/// <param name="Time">How long.</param>
/// <param name="FractionLeft">What is left of what was in the air.</param>
public sealed record Purge(Duration Time, double FractionLeft)
{
    /// <summary>How long until only a fraction is left.</summary>
    /// <param name="changesPerHour">Room volumes of fresh air per hour, more than 0 to 1000.</param>
    /// <param name="fraction">What may be left, more than 0 to less than 1.</param>
    /// <param name="mixingFactor">1 to 10.</param>
    public static Result<Purge> Until(double changesPerHour, double fraction, double mixingFactor = 1)
    {
        Problem[] faults = [.. Faults(changesPerHour, mixingFactor), .. fraction is > 0 and < 1 ? [] : new[] { AirProblems.Fraction(fraction) }];
        return faults.Length > 0
            ? Result<Purge>.Failed(faults)
            : new Purge(RoomAir.TimeUntilLeft(changesPerHour / mixingFactor, fraction)!.Value, fraction);
    }

    /// <summary>What is left after so long.</summary>
    /// <param name="changesPerHour">Room volumes of fresh air per hour, more than 0 to 1000.</param>
    /// <param name="time">How long.</param>
    /// <param name="mixingFactor">1 to 10.</param>
    public static Result<Purge> After(double changesPerHour, Duration time, double mixingFactor = 1)
    {
        Problem[] faults = [.. Faults(changesPerHour, mixingFactor), .. time >= Duration.Zero ? [] : new[] { AirProblems.NoTime(time.Minutes) }];
        return faults.Length > 0
            ? Result<Purge>.Failed(faults)
            : new Purge(time, RoomAir.FractionLeft(changesPerHour / mixingFactor, time));
    }

    private static IEnumerable<Problem> Faults(double changesPerHour, double mixingFactor) =>
    [
        .. changesPerHour is > 0 and <= 1000 ? [] : new[] { AirProblems.Changes(changesPerHour) },
        .. mixingFactor is >= 1 and <= 10 ? [] : new[] { AirProblems.Mixing(mixingFactor) },
    ];
}
