namespace JarLabel.Bench.Answers;

/// <summary>What was measured of a printer and a sheet.</summary>
internal sealed record CalibrationFiguresJson(double ShiftXMillimeters, double ShiftYMillimeters, double ScaleX, double ScaleY, DateOnly Measured);
