namespace JarLabel.Core.Air;

/// <summary>What a window lets in, roughly.</summary>
public static class Draught
{
    /// <summary>How well wind that blows aslant fills an opening: 0.25 to 0.35 (ASHRAE Handbook, Fundamentals, airflow through openings;
    /// from memory).</summary>
    private const double AslantWind = 0.3;

    /// <summary>What a window as small shops have them, half a square metre, lets in when air hardly moves, 1 m/s: the careful side of a
    /// light breeze. On a still day it is next to nothing.</summary>
    public static VolumeFlow ThroughSmallWindow { get; } = ThroughWindow(Area.FromSquareMeters(0.5), Speed.FromMetersPerSecond(1));

    /// <summary>Air through an open window by wind, when there is as large an opening on the other side.</summary>
    /// <param name="opening">The free area of the window.</param>
    /// <param name="wind">Outside; a light breeze is about 2 m/s.</param>
    public static VolumeFlow ThroughWindow(Area opening, Speed wind) =>
        VolumeFlow.FromCubicMetersPerSecond(AslantWind * opening.SquareMeters * wind.MetersPerSecond);

    /// <summary>Room volumes per hour that an airflow makes.</summary>
    public static double ChangesPerHour(VolumeFlow air, Volume room) => air.CubicMetersPerHour / room.CubicMeters;
}
