using System.CommandLine;
using System.Globalization;
using JarLabel.Bench.Calibrating;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Store.Printers;

namespace JarLabel.Cli.Commands;

/// <summary><c>calibrate</c>: the page to measure a printer on, and what was measured.</summary>
internal static class CalibrateCommand
{
    private static readonly Option<string> Sheet = new("--sheet") { Description = "The label stock (\"jarlabel sheets\" lists it).", HelpName = "id" };
    private static readonly Option<string> Printer = new("--printer") { Description = "The printer's name; else what holds for any.", HelpName = "name" };
    private static readonly Option<string> Dx = new("--dx") { Description = "How far right of its place the first label is printed, mm: 0.8, -0.5.", HelpName = "mm" };
    private static readonly Option<string> Dy = new("--dy") { Description = "How far below its place, mm.", HelpName = "mm" };
    private static readonly Option<string> LastDx = new("--last-dx") { Description = "The same at the last label: a shift that grows is scaling.", HelpName = "mm" };
    private static readonly Option<string> LastDy = new("--last-dy") { Description = "The same, down.", HelpName = "mm" };
    private static readonly Option<string> Sx = new("--sx") { Description = "The ruler across, as measured over what it says: 199/200.", HelpName = "scale" };
    private static readonly Option<string> Sy = new("--sy") { Description = "The ruler down.", HelpName = "scale" };
    private static readonly Option<bool> Forget = new("--forget") { Description = "Forget what was measured." };
    private static readonly Option<string> Out = new("--out") { Description = "The page's file: .pdf, .png or .svg; else a PDF in the shop's labels folder.", HelpName = "file" };

    internal static Command Create(Runner runner)
    {
        var command = new Command("calibrate", "Print a page to measure a printer on; or keep what was measured, so that labels meet their places.");
        foreach (var option in (Option[])[Sheet, Printer, Dx, Dy, LastDx, LastDy, Sx, Sy, Forget, Out, SharedOptions.Force])
        {
            command.Add(option);
        }

        return runner.Runs(command, Run);
    }

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var bench = session.Workbench;
        var sheet = typed.Needed(Sheet, "letter-2x5-101.6x50.8", Words.TextUpTo(80));
        var printer = typed.Fact(Printer, Words.TextUpTo(80));
        var measured = new CalibrationWish(
            typed.Value(Dx, MeasureWords.Millimeters),
            typed.Value(Dy, MeasureWords.Millimeters),
            typed.Value(LastDx, MeasureWords.Millimeters),
            typed.Value(LastDy, MeasureWords.Millimeters),
            typed.Value(Sx, MeasureWords.Scale),
            typed.Value(Sy, MeasureWords.Scale));
        if (typed.Switch(Forget) && !measured.IsEmpty)
        {
            typed.Refuse(TypingProblems.OneOfTwo(Forget.Name, typed.Given.First(name => name is not "--forget" and not "--sheet" and not "--printer")));
        }

        var file = typed.File(Out);
        return typed.Then(() =>
            typed.Switch(Forget) ? CalibrateSheet.Forget(bench, sheet, printer).Then<Answer>(_ => Forgotten(session, sheet, printer))
            : measured.IsEmpty ? CalibrateSheet.Print(bench, sheet, printer, file).Then<Answer>(page => Printed(page))
            : CalibrateSheet.Keep(bench, sheet, printer, measured).Then<Answer>(kept => Kept(session, kept)));
    }

    private static Answer Printed(PrintedCalibration page) => Say(
        new Screen().Title($"Calibration page for {page.Sheet}").Gap().Rows(
            ("page", page.File),
            ("print", "on plain paper at actual size; it says what to measure"),
            ("kept so far", page.Known is { } known ? Figures(known) : "nothing"))
            .Next($"jarlabel calibrate --sheet {page.Sheet} --dx 0.8 --dy -0.5 --sx 199.5/200 --sy 199.5/200"),
        new CalibrationJson(page.Sheet, page.Printer, page.File, page.Known));

    private static Answer Kept(Session session, Calibration kept) => Say(
        new Screen().Title($"{kept.Sheet} on {Named(kept.Printer)}").Gap().Rows((session.Workbench.DryRun ? "would be kept" : "kept", Figures(kept)), (session.Workbench.DryRun ? "then" : "from now on", $"labels on this sheet {(session.Workbench.DryRun ? "would be" : "are")} placed by it"))
            .Next(session.Workbench.DryRun ? "the same without --dry-run keeps it" : $"jarlabel label 1 --sheet {kept.Sheet}{(kept.Printer is null ? "" : $" --printer \"{kept.Printer}\"")}"),
        new CalibrationJson(kept.Sheet, kept.Printer, null, kept));

    private static Answer Forgotten(Session session, string sheet, string? printer) => Say(
        new Screen().Title($"{sheet} on {Named(printer)}: labels {(session.Workbench.DryRun ? "would be" : "are")} placed by the sheet alone").Next($"jarlabel calibrate --sheet {sheet}"), new CalibrationJson(sheet, printer, null, default(Calibration)));

    private static Answer Say(Screen screen, CalibrationJson json) => Answer.Of(screen, json, c => c.CalibrationJson);

    private static string Named(string? printer) => printer ?? "any printer";

    private static string Figures(Calibration kept) => string.Create(CultureInfo.InvariantCulture,
        $"{Shift(kept.ShiftX, "right", "left")}, {Shift(kept.ShiftY, "down", "up")}; scale {kept.ScaleX:0.####} across, {kept.ScaleY:0.####} down ({kept.Measured:yyyy-MM-dd})");

    private static string Shift(double shift, string plus, string minus) => string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(shift):0.##} mm {(shift < 0 ? minus : plus)}");
}
