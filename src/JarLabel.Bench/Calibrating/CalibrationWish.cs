namespace JarLabel.Bench.Calibrating;

/// <summary>What somebody measured on a calibration page; what is null was not measured.</summary>
/// <param name="Dx">Shift to the right at the first label, mm.</param>
/// <param name="Dy">Shift down at the first label, mm.</param>
/// <param name="LastDx">Shift to the right at the last label, mm.</param>
/// <param name="LastDy">Shift down at the last label, mm.</param>
/// <param name="Sx">Measured over true length, across.</param>
/// <param name="Sy">Measured over true length, down.</param>
public sealed record CalibrationWish(double? Dx, double? Dy, double? LastDx, double? LastDy, double? Sx, double? Sy)
{
    /// <summary>True when nothing was measured yet.</summary>
    public bool IsEmpty => (Dx ?? Dy ?? LastDx ?? LastDy ?? Sx ?? Sy) is null;
}
