using JarLabel.Store.Printers;

namespace JarLabel.Bench.Answers;

/// <summary>What <c>calibrate</c> says: the page that was written, or what is kept.</summary>
internal sealed record CalibrationJson(string Sheet, string? Printer, string? File, CalibrationFiguresJson? Kept)
{
    internal CalibrationJson(string sheet, string? printer, string? file, Calibration? kept)
        : this(sheet, printer, file, kept is null ? null : new CalibrationFiguresJson(kept.ShiftX, kept.ShiftY, kept.ScaleX, kept.ScaleY, kept.Measured))
    {
    }
}
