namespace JarLabel.Operations.Steps;

/// <summary>The page to measure a printer on, and what was measured.</summary>
internal static class CalibrateStep
{
    private static Input<string> Sheet => field ??= Input.Of("sheet", "Label stock", "letter-2x5-101.6x50.8", (Reader<string>)ValueReader.TextUpTo(80).Invoke)
        .Help("id", "The label stock (\"jarlabel sheets\" lists it).")
        .Choices(Choose.Stock("choose"));

    private static Input<string?> Printer => field ??= Input.Optional("printer", "Printer", "bench", (Reader<string>)ValueReader.TextUpTo(80).Invoke).Help("name", "The printer's name; else what holds for any.").Hint("its name; any when left empty");

    private static Input<double?> Dx => field ??= Shift("dx", "First label, right by", "How far right of its place the first label is printed, mm: 0.8, -0.5.");

    private static Input<double?> Dy => field ??= Shift("dy", "First label, down by", "How far below its place, mm.");

    private static Input<double?> LastDx => field ??= Shift("last-dx", "Last label, right by", "The same at the last label: a shift that grows is scaling.");

    private static Input<double?> LastDy => field ??= Shift("last-dy", "Last label, down by", "The same, down.");

    private static Input<double?> Sx => field ??= Scale("sx", "The ruler across", "The ruler across, as measured over what it says: 199/200.");

    private static Input<double?> Sy => field ??= Scale("sy", "The ruler down", "The ruler down.");

    private static Input<CalibrationWish> Measured => field ??= Input.Group<CalibrationWish>([Dx, Dy, LastDx, LastDy, Sx, Sy], given =>
        new CalibrationWish(given.Get(Dx), given.Get(Dy), given.Get(LastDx), given.Get(LastDy), given.Get(Sx), given.Get(Sy)));

    private static Input<bool> Forget => field ??= Input.Flag("forget", "Forget what was measured").Help("Forget what was measured.").More();

    private static Input<string?> Out => field ??= Shared.Out("The page's file: .pdf, .png or .svg; else a PDF in the shop's labels folder.");

    internal static Step Step => field ??= Step.OfShop("calibrate", "Measure a printer", "Print a page to measure a printer on; or keep what was measured, so that labels meet their places.",
        [Sheet, Printer, Measured, Forget, Out, Shared.Force], Do) with
    {
        Button = "Write the page, or keep what was measured",
        Says = "Without figures this writes the page to measure on. Print it on plain paper at actual size; it says what to measure.",
        Holds = NotBoth,
    };

    private static IEnumerable<Problem> NotBoth(Values given)
    {
        if (given.Text("forget") is not null && Measured.Fields.FirstOrDefault(one => given.Text(one.Name) is not null) is { } first)
        {
            yield return TypingProblems.OneOfTwo("forget", first.Name);
        }
    }

    private static Result<Outcome> Do(Values given)
    {
        var (bench, sheet, printer, measured) = (given.Bench, given.Get(Sheet), given.Get(Printer), given.Get(Measured));
        if (given.Get(Forget))
        {
            return CalibrateSheet.Forget(bench, sheet, printer).Then<Outcome>(_ => new Outcome(CalibrationAnswer.Forgotten(bench, sheet, printer)));
        }

        return measured.IsEmpty
            ? CalibrateSheet.Print(bench, sheet, printer, given.Get(Out)).Then<Outcome>(page => new Outcome(CalibrationAnswer.Printed(page)) { Files = [page.File] })
            : CalibrateSheet.Keep(bench, sheet, printer, measured).Then<Outcome>(kept => new Outcome(CalibrationAnswer.Kept(bench, kept)));
    }

    private static Input<double?> Shift(string name, string label, string help) => Input.Optional<double>(name, label, "0.8", MeasureWords.Millimeters).Help("mm", help).Hint("mm: 0.8, -0.5").Observed();

    private static Input<double?> Scale(string name, string label, string help) => Input.Optional<double>(name, label, "199/200", MeasureWords.Scale).Help("scale", help).Hint("measured over true: 199/200").Observed();
}
