namespace JarLabel.Layout.Calibration;

/// <summary>How print lies along one axis, told from two shifts: a constant one is an offset of the paper, a growing one is scaling.</summary>
/// <param name="Shift">Shift at the first label, mm.</param>
/// <param name="Scale">Printed length over true length.</param>
public readonly record struct ShiftAlong(double Shift, double Scale)
{
    /// <summary>A difference that hand and eye make when they read a shift twice, mm; less than this is no growth.</summary>
    public const double Reading = 0.3;

    /// <summary>From the shifts at the first and at the last label.</summary>
    /// <param name="first">Shift at the first label, mm.</param>
    /// <param name="last">Shift at the last label, mm.</param>
    /// <param name="distance">From the first label's corner to the same corner of the last, mm; 0 where there is only one.</param>
    public static ShiftAlong Of(double first, double last, double distance) => Math.Abs(last - first) <= Reading || distance <= 0
        ? new ShiftAlong(distance <= 0 ? first : (first + last) / 2, 1)
        : new ShiftAlong(first, 1 + ((last - first) / distance));
}
