namespace JarLabel.Core.Labels;

/// <summary>What a calibration page says: what to measure, and what to type then.</summary>
public static class CalibrationWords
{
    /// <summary>The heading.</summary>
    public static string Title(string sheet, string? printer) => $"Calibration: {sheet}{(printer is null ? "" : $", {printer}")}";

    /// <summary>The sentences in order of weight; on small paper the first ones must do.</summary>
    /// <param name="sheet">The stock's id.</param>
    /// <param name="printer">The printer's name; null for any.</param>
    /// <param name="across">Length of the ruler across, mm.</param>
    /// <param name="down">Length of the ruler down, mm.</param>
    /// <param name="crosses">Where the crosses ought to lie.</param>
    public static IReadOnlyList<string> Steps(string sheet, string? printer, int across, int down, string crosses) =>
    [
        "Print at actual size (100 %), never \"fit to page\", on plain paper.",
        Say($"1. Measure the ruler across, 0 to {across}. If it is {across} mm: well. If it is, say, {across * 0.995:0.#} mm, type --sx {across * 0.995:0.#}/{across}."),
        Say($"2. Measure the ruler down in the same way: --sy {down * 0.995:0.#}/{down}. More than 2 % off means that scaling is on in the print dialog."),
        $"3. {crosses} How far off is the first one, in mm? To the right and down count plus: --dx 0.8 --dy -0.5.",
        "4. Do the same at the last label: --last-dx, --last-dy. The same shift everywhere is an offset; a shift that grows from the first label to the last is scaling. Given both, the program tells them apart.",
        Say($"Then type: jarlabel calibrate --sheet {sheet}{(printer is null ? "" : $" --printer \"{printer}\"")} --dx 0.8 --dy -0.5 --sx {across * 0.995:0.#}/{across}, with your own figures. They replace the older ones; this page is always printed without them."),
        "5. Scan the codes. The smallest that is read at once is what this printer can do; labels use 0.42 mm a module or more.",
    ];

    /// <summary>The same in few words, for a roll whose labels are small.</summary>
    public static IReadOnlyList<string> ShortSteps(int across, int down, double inside) =>
    [
        Say($"Rulers true? If not: --sx {across - 0.2:0.#}/{across} --sy {down - 0.1:0.#}/{down}."),
        Say($"Crosses {inside:0.#} mm inside? If not: --dx, --dy in mm, right and down plus."),
        "Smallest code that scans?",
    ];

    /// <summary>Where the crosses of a sheet of labels ought to lie.</summary>
    public const string OnSheet = "Lay the page on an empty label sheet, hold both against the light: each cross should lie on the corner of a label.";

    /// <summary>Where the crosses of a sheet of round labels ought to lie.</summary>
    public const string OnRounds = "Lay the page on an empty label sheet, hold both against the light: each cross should lie on the edge of a label, above, below, left or right of its middle.";

    /// <summary>What stands under a code of the strip.</summary>
    public static string Module(double millimeters, int dots) => Say($"{millimeters:0.00} mm, {dots} dots");

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
