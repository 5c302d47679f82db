namespace JarLabel.Store.Printers;

/// <summary>How a printer was found to print on a sheet of labels.</summary>
/// <param name="Printer">The printer's name; null for whichever is used when none is named.</param>
/// <param name="Sheet">The stock's id.</param>
/// <param name="ShiftX">How far right of its place the first label is printed, mm.</param>
/// <param name="ShiftY">How far below its place, mm.</param>
/// <param name="ScaleX">Printed over true length, across.</param>
/// <param name="ScaleY">Printed over true length, down.</param>
/// <param name="Measured">The day it was measured.</param>
public sealed record Calibration(string? Printer, string Sheet, double ShiftX, double ShiftY, double ScaleX, double ScaleY, DateOnly Measured)
{
    /// <summary>Largest shift that is believed, mm. Paper is fed within 1 mm; more means another paper or a page that was scaled or centred.</summary>
    public const double MostShift = 6;

    /// <summary>Smallest scale that is believed.</summary>
    public const double LeastScale = 0.98;

    /// <summary>Largest scale that is believed.</summary>
    public const double MostScale = 1.02;
}
