namespace JarLabel.Operations.Answers;

/// <summary>What is said of a printer that is measured.</summary>
internal static class CalibrationAnswer
{
    internal static Answer Printed(PrintedCalibration page) => Say(
        new Screen().Title($"Calibration page for {page.Sheet}").Gap().Rows(
            ("page", page.File),
            ("print", "on plain paper at actual size; it says what to measure"),
            ("kept so far", page.Known is { } known ? Figures(known) : "nothing"))
            .Next("calibrate", ("sheet", page.Sheet), ("dx", "0.8"), ("dy", "-0.5"), ("sx", "199.5/200"), ("sy", "199.5/200")),
        new CalibrationJson(page.Sheet, page.Printer, page.File, page.Known));

    internal static Answer Kept(Workbench bench, Calibration kept)
    {
        var screen = new Screen().Title($"{kept.Sheet} on {Named(kept.Printer)}").Gap().Rows(
            (bench.DryRun ? "would be kept" : "kept", Figures(kept)),
            (bench.DryRun ? "then" : "from now on", $"labels on this sheet {(bench.DryRun ? "would be" : "are")} placed by it"));
        return Say(
            bench.DryRun ? screen.InEarnest("keeps") : screen.Next(JarToName.Label(bench, ("sheet", kept.Sheet), ("printer", kept.Printer))),
            new CalibrationJson(kept.Sheet, kept.Printer, null, kept));
    }

    internal static Answer Forgotten(Workbench bench, string sheet, string? printer) => Say(
        new Screen().Title($"{sheet} on {Named(printer)}: labels {(bench.DryRun ? "would be" : "are")} placed by the sheet alone").Next("calibrate", ("sheet", sheet)), new CalibrationJson(sheet, printer, null, default(Calibration)));

    private static Answer Say(Screen screen, CalibrationJson json) => Answer.Of(screen, json, c => c.CalibrationJson);

    private static string Named(string? printer) => printer ?? "any printer";

    private static string Figures(Calibration kept) => string.Create(CultureInfo.InvariantCulture,
        $"{Shift(kept.ShiftX, "right", "left")}, {Shift(kept.ShiftY, "down", "up")}; scale {kept.ScaleX:0.####} across, {kept.ScaleY:0.####} down ({kept.Measured:yyyy-MM-dd})");

    private static string Shift(double shift, string plus, string minus) => string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(shift):0.##} mm {(shift < 0 ? minus : plus)}");
}

/// <summary>What was measured of a printer and a sheet.</summary>
internal sealed record CalibrationFiguresJson(double ShiftXMillimeters, double ShiftYMillimeters, double ScaleX, double ScaleY, DateOnly Measured);

/// <summary>What <c>calibrate</c> says: the page that was written, or what is kept.</summary>
internal sealed record CalibrationJson(string Sheet, string? Printer, string? File, CalibrationFiguresJson? Kept)
{
    internal CalibrationJson(string sheet, string? printer, string? file, Calibration? kept)
        : this(sheet, printer, file, kept is null ? null : new CalibrationFiguresJson(kept.ShiftX, kept.ShiftY, kept.ScaleX, kept.ScaleY, kept.Measured))
    {
    }
}
