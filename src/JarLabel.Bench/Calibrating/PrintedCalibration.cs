using JarLabel.Store.Printers;

namespace JarLabel.Bench.Calibrating;

/// <summary>A calibration page that was written.</summary>
/// <param name="File">The file's full path.</param>
/// <param name="Sheet">The stock's id.</param>
/// <param name="Printer">The printer's name; null for any.</param>
/// <param name="Known">What is kept of it so far; null when nothing is.</param>
public sealed record PrintedCalibration(string File, string Sheet, string? Printer, Calibration? Known);
