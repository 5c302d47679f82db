using JarLabel.Layout.Calibration;

namespace JarLabel.Operations.Calibrating;

/// <summary>Teaches the shop how a printer meets a sheet of labels: prints the page to measure on, and keeps what was measured.</summary>
public static class CalibrateSheet
{
    /// <summary>Writes the page to measure on, without any correction.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="sheet">The stock's id.</param>
    /// <param name="printer">The printer's name; null for any.</param>
    /// <param name="file">The file to write; null for the usual place.</param>
    public static Result<PrintedCalibration> Print(Workbench bench, string sheet, string? printer, string? file)
    {
        return Find(bench, sheet).Then(stock => CalibrationFile.Find(bench.Folder, printer, stock.Id).Then(found =>
        {
            var page = Page(stock, printer);
            var path = file ?? Path.Combine(bench.Folder.Labels, $"calibration-{stock.Id}.pdf");
            return LabelFiles.Bytes(path, [page], $"Calibration {stock.Id}", bench.Now).Then(bytes => LedgerAccess.Record<PrintedCalibration>(bench, step =>
            {
                step.Write(bench, path, bytes);
                return new PrintedCalibration(path, stock.Id, printer, found.Calibration);
            }));
        }));
    }

    /// <summary>The page alone.</summary>
    public static Page Page(Sheet stock, string? printer) => new CalibrationPage(stock, printer, new SkiaRuler()).Draw();

    /// <summary>Keeps what was measured, if it can be believed; it takes the place of what was kept before.</summary>
    public static Result<Calibration> Keep(Workbench bench, string sheet, string? printer, CalibrationWish measured)
    {
        return Find(bench, sheet).Then(stock => Reckoned(bench, stock, printer, measured)).Then(calibration => bench.DryRun ? calibration : CalibrationFile.Keep(bench.Folder, calibration));
    }

    /// <summary>Forgets what was measured.</summary>
    public static Result<bool> Forget(Workbench bench, string sheet, string? printer)
    {
        return Find(bench, sheet).Then(stock => bench.DryRun ? true : CalibrationFile.Forget(bench.Folder, printer, stock.Id).Then<bool>(was => was ? true : CalibrationProblems.NothingToForget(stock.Id)));
    }

    private static Result<Sheet> Find(Workbench bench, string sheet) => LabelComposer.Open(bench).Then(composer => composer.Stock(sheet));

    private static Result<Calibration> Reckoned(Workbench bench, Sheet stock, string? printer, CalibrationWish measured)
    {
        var (first, last) = (stock.AreaAt(1), stock.AreaAt(stock.Places));
        var across = Along(measured.Dx, measured.LastDx, measured.Sx, last.X - first.X);
        var down = Along(measured.Dy, measured.LastDy, measured.Sy, last.Y - first.Y);
        Problem[] problems =
        [
            .. OfShift("dx", measured.Dx), .. OfShift("dy", measured.Dy), .. OfShift("last-dx", measured.LastDx), .. OfShift("last-dy", measured.LastDy),
            .. Missing("last-dx", measured.LastDx, "dx", measured.Dx), .. Missing("last-dy", measured.LastDy, "dy", measured.Dy),
            .. OfScale(measured.Sx is null && measured.LastDx is not null ? "last-dx" : "sx", across.Scale),
            .. OfScale(measured.Sy is null && measured.LastDy is not null ? "last-dy" : "sy", down.Scale),
        ];
        return problems.Length > 0
            ? Result<Calibration>.Failed(problems)
            : new Calibration(printer, stock.Id, across.Shift, down.Shift, across.Scale, down.Scale, DateOnly.FromDateTime(bench.Now));
    }

    // A length read from a ruler of 200 mm says more about the scale than two shifts do.
    private static ShiftAlong Along(double? first, double? last, double? scale, double distance) => (first, last, scale) switch
    {
        (_, _, { } known) => new ShiftAlong(first ?? 0, known),
        ({ } one, { } other, null) => Rounded(ShiftAlong.Of(one, other, distance)),
        _ => new ShiftAlong(first ?? 0, 1),
    };

    private static ShiftAlong Rounded(ShiftAlong read) => new(Math.Round(read.Shift, 3), Math.Round(read.Scale, 6));

    private static IEnumerable<Problem> OfShift(string option, double? shift)
    {
        if (shift is { } read && Math.Abs(read) > Calibration.MostShift)
            yield return CalibrationProblems.ShiftAbsurd(option, read);
    }

    private static IEnumerable<Problem> OfScale(string option, double scale)
    {
        if (scale is < Calibration.LeastScale or > Calibration.MostScale)
            yield return CalibrationProblems.ScalingIsOn(option, scale);
    }

    private static IEnumerable<Problem> Missing(string given, double? value, string other, double? otherValue)
    {
        if (value is not null && otherValue is null)
            yield return CalibrationProblems.FirstMissing(given, other);
    }
}

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

/// <summary>A calibration page that was written.</summary>
/// <param name="File">The file's full path.</param>
/// <param name="Sheet">The stock's id.</param>
/// <param name="Printer">The printer's name; null for any.</param>
/// <param name="Known">What is kept of it so far; null when nothing is.</param>
public sealed record PrintedCalibration(string File, string Sheet, string? Printer, Calibration? Known);
