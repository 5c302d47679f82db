namespace JarLabel.Operations.Calibrating;

/// <summary>What can be wrong with what somebody measured.</summary>
internal static class CalibrationProblems
{
    internal static Problem ScalingIsOn(string option, double scale) => new("JL350", Say(
        $"Read a scale of {scale:0.####} ({100 * (scale - 1):+0.#;-0.#} %): scaling is on in the print dialog. Choose \"actual size\" or 100 % there, print the page again and measure again; what is left must be between {Calibration.LeastScale} and {Calibration.MostScale}, such as 199/200."), option);

    internal static Problem ShiftAbsurd(string option, double shift) => new("JL351", Say(
        $"Read a shift of {shift:0.##} mm: paper is fed within about 1 mm, so more than {Calibration.MostShift} mm is another cause. Check that the printer's paper size is the sheet's own, and that scaling and centring are off in the print dialog; then print the page again."), option);

    internal static Problem FirstMissing(string given, string other) =>
        new("JL352", Message.Of($"{new InputName(given)} says how the last label is shifted, and without {new InputName(other)} for the first one nobody knows whether the shift grows. Give both, such as {new InputName(other, "0.5")} {new InputName(given, "0.9")}."), given);

    internal static Problem NothingToForget(string sheet) =>
        new("JL353", $"Nothing was measured for the sheet \"{sheet}\" on that printer, so there is nothing to forget.", "forget");

    internal static Problem NobodyKnows(string printer, IReadOnlyList<string> known) => new(
        "JL356",
        Message.Of($"There is no printer {Quoted.Of(printer)} that was measured or named{(Nearest.To(printer, known) is { } meant ? $"; did you mean {Quoted.Of(meant)}?" : ".")} "
        + $"{(known.Count == 0 ? "None is known yet: " : $"Known are: {string.Join(", ", known.Select(Quoted.Of))}. A new one: ")}"
        + $"measure it with {new Remedy("calibrate", new InputName("sheet", "ID"), new InputName("printer", "NAME"))}, or leave {new InputName("printer")} out."),
        "printer");

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
