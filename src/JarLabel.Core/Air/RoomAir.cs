namespace JarLabel.Core.Air;

/// <summary>How vapour gathers in a room and leaves it: <c>C = G/Q (1 - e^(-Qt/V))</c> while it is given off, <c>C = C1 e^(-Qt/V)</c>
/// afterwards (ACGIH, Industrial Ventilation, dilution). Q is the fresh air that counts: what comes in, over the mixing factor.</summary>
public static class RoomAir
{
    /// <summary>What is in the air after so long of steady giving off.</summary>
    /// <param name="vaporPerHour">Vapour given off.</param>
    /// <param name="room">Air in the room.</param>
    /// <param name="changesPerHour">Fresh air that counts, room volumes per hour.</param>
    /// <param name="elapsed">Since it began.</param>
    /// <returns>Fraction by volume, 0 for clean air.</returns>
    public static double FractionAfter(VolumeFlow vaporPerHour, Volume room, double changesPerHour, Duration elapsed)
    {
        var gathered = vaporPerHour.CubicMetersPerHour * elapsed.Hours / room.CubicMeters;
        return gathered * KeptOf(changesPerHour * elapsed.Hours);
    }

    /// <summary><c>(1 - e^-x) / x</c>; near 0 by its series, where the difference would lose its digits.</summary>
    private static double KeptOf(double changes) => changes < 1e-5 ? 1 - (changes / 2) : (1 - Math.Exp(-changes)) / changes;

    /// <summary>The fraction of a starting concentration that is left after so long.</summary>
    public static double FractionLeft(double changesPerHour, Duration elapsed) => Math.Exp(-changesPerHour * elapsed.Hours);

    /// <summary>How long until only a fraction of a starting concentration is left; null when no fresh air comes in.</summary>
    public static Duration? TimeUntilLeft(double changesPerHour, double fraction) =>
        fraction >= 1 ? Duration.Zero
        : changesPerHour > 0 ? Duration.FromHours(-Math.Log(fraction) / changesPerHour)
        : null;

    /// <summary>Fresh air that keeps steady giving off at a concentration: <c>Q = K G / C</c>.</summary>
    /// <param name="vaporPerHour">Vapour given off.</param>
    /// <param name="ppm">The concentration not to be passed.</param>
    /// <param name="mixingFactor">1 to 10.</param>
    public static VolumeFlow AirFor(VolumeFlow vaporPerHour, double ppm, double mixingFactor) => vaporPerHour * (mixingFactor * 1e6 / ppm);
}
