using JarLabel.Core.Catalog;

namespace JarLabel.Layout;

/// <summary>What can be wrong with sheets, designs and what is to be printed on them: JL301 to JL329.</summary>
internal static class LayoutProblems
{
    /// <summary>The code of everything wrong inside a sheet file.</summary>
    internal const string SheetFile = "JL301";

    /// <summary>The code of everything wrong inside a design file.</summary>
    internal const string DesignFile = "JL302";

    internal static string IdIsNotFileName(string id, string file) =>
        $"Read \"{id}\"; it must be the file's name without .json, here \"{Path.GetFileNameWithoutExtension(file)}\".";

    internal static string RoundIsNotRound(double width, double height) =>
        Say($"Read width {width} and height {height}; a round label has one diameter, so both must be the same, for example 50.8 and 50.8.");

    internal static string LabelsOverlap(double pitch, double label) =>
        Say($"Read a pitch of {pitch} mm for labels of {label} mm: they would overlap. The pitch runs from one label's edge to the same edge of the next; at least {label}.");

    internal static string LabelsLeavePaper(string paper, double end, double has) =>
        Say($"The last label ends at {end:0.###} mm; the {paper} is {has} mm. Check left or top, pitch and count.");

    internal static string NotOnTheScale(double points, IEnumerable<double> scale) =>
        Say($"Read {points}; type sizes come from one scale: {string.Join(' ', scale.Select(size => Say($"{size}")))} points.");

    internal static string SizesNotFalling() => "The sizes must go from the largest to the smallest allowed, for example [8, 7, 6].";

    internal static string UnknownVoice(string voice, IEnumerable<string> voices) =>
        $"Read \"{voice}\"; the voices of this design are: {string.Join(", ", voices)}.";

    internal static string UnknownKey(string key, IEnumerable<string> keys) =>
        $"Read \"{key}\"; what can be printed here is: {string.Join(", ", keys)}.";

    internal static string BandNeedsHeight(string box) =>
        $"In a round design every band (a box directly inside the outermost one) needs its \"height\" in mm, because the circle's width depends on it; \"{box}\" has none.";

    internal static string BetweenNeedsOnePerLine() => "Rows that stand side by side have no line between them; leave \"perLine\" or \"between\" out.";

    internal static string RoundNeedsRows() => "The outermost box of a round design must be of kind \"rows\".";

    internal static string TooFewNames() => "A list needs at least one entry, for example [\"GHS02\"].";

    internal static string NameUsedTwice(string name) => $"Two boxes are called \"{name}\"; give one of them another \"name\", so that a message can tell them apart.";

    internal static string InsetTooSmall(double inset, double least) =>
        Say($"Read {inset} mm; printers feed and cut up to {least} mm off, so the inset must be at least {least}.");

    internal static Problem UnknownSheet(string id, IReadOnlyCollection<string> known, string where) =>
        new("JL303", $"There is no sheet \"{Shown(id)}\".{Nearest.Asked(id, known)} Known sheets: {string.Join(", ", known)}.", where);

    internal static Problem UnknownDesign(string id, IReadOnlyCollection<string> known, string where) =>
        new("JL304", $"There is no design \"{Shown(id)}\".{Nearest.Asked(id, known)} Known designs: {string.Join(", ", known)}.", where);

    internal static Problem NoSuchPlace(int place, string sheet, int places) =>
        new("JL305", $"Read place {place}; the sheet \"{sheet}\" has places 1 to {places}.", "start");

    internal static Problem DesignDoesNotSuit(Design design, LabelArea area) =>
        new("JL306", Message.Of($"The design \"{design.Id}\" is for {Sized(design.Shape, design.Width, design.Height)} or larger; this label is {Sized(area.Shape, area.Width, area.Height)}. Choose another {new InputName("design")} or {new InputName("sheet")}."), "design");

    internal static Problem TooWide(string where, string text, double needs, double has) =>
        new("JL310", Say($"\"{Shown(text)}\" needs {needs:0.0} mm at the smallest size allowed here; the box has {has:0.0} mm. Shorten it, or choose a larger label."), where);

    internal static Problem TooHigh(string where, double needs, double has) =>
        new("JL311", Say($"What must stand here needs {needs:0.0} mm of height at the smallest size allowed; there are {has:0.0} mm. Choose a larger label or another design."), where);

    internal static Problem MissingGlyph(string where, string element, string text) =>
        new("JL312", $"The typeface has no \"{element}\" ({CodePoints(element)}), read in \"{Shown(text)}\". Write it in Latin letters, for example a word instead of a picture sign.", where);

    internal static Problem ControlCharacter(string where, char found, string text) =>
        new("JL313", $"Read a control character ({CodePoints(found.ToString())}) in \"{Shown(text)}\". Only characters that can be printed are allowed.", where);

    internal static Problem CodeTooSmall(string where, double module, double dots) =>
        new("JL314", Say($"A module of the code would be {module:0.###} mm or {dots:0.#} printer dots; at least 0.40 mm and 4 dots are needed to scan it. Choose a larger label, or a shorter address for the code."), where);

    internal static Problem QuietZoneCrossed(string where, string by) =>
        new("JL315", $"The four white modules around the code are not free: \"{by}\" stands in them.", where);

    internal static Problem OutsideInset(string where, double by) =>
        new("JL316", Say($"Reaches {by:0.00} mm beyond the part of the label that is safe to print on."), where);

    internal static Problem LabelOutsideSheet(string where, double by) =>
        new("JL317", Message.Of($"The label does not lie wholly on the sheet: {by:0.0} mm of it would leave the paper. Check the sheet's dimensions with {new Remedy("check")}, or measure again with {new Remedy("calibrate")}."), where);

    internal static Problem TextsOverlap(string where, string other, string text) =>
        new("JL318", $"\"{Shown(text)}\" overlaps what stands in \"{other}\".", where);

    internal static Problem CodeReadsDifferently(string where, string payload, string? read) =>
        new("JL319", $"The code should say \"{Shown(payload)}\"; read back it says {(read is null ? "nothing" : $"\"{Shown(read)}\"")}.", where);

    internal static Problem PayloadTooLong(string where, int length) =>
        new("JL320", Say($"The code would have to hold {length} characters; the largest code holds 2331 at this strength. Set a shorter base address."), where);

    internal static Problem UnknownSymbol(string where, string code, IEnumerable<string> known) =>
        new("JL321", $"There is no drawing for the symbol \"{code}\". Known are: {string.Join(", ", known)}.", where);

    internal static Problem Hairline(string where, double thickness) =>
        new("JL322", Say($"A line of {thickness:0.00} mm is too thin to print surely; at least 0.25 mm."), where);

    internal static Problem LettersTooSmallFrom(string where, double height, double meters, double readable) =>
        new("JL323", Message.Of($"The capitals are {height:0.0} mm high; from {meters:0.##} m they cannot be read surely. All of it can from {readable:0.0} m: ask for {new InputName("distance", Say($"{readable:0.0}"))}, or use larger paper with a design of its own."), where);

    internal static Problem SignTooSmallFrom(string where, double height, double meters, double readable) =>
        new("JL324", Message.Of($"A sign is {height:0.0} mm high; from {meters:0.##} m it cannot be recognized surely. All of it can from {readable:0.0} m: ask for {new InputName("distance", Say($"{readable:0.0}"))}, or use larger paper with a design of its own."), where);

    private static string Sized(LabelShape shape, double width, double height) =>
        Say($"{(shape == LabelShape.Round ? "round" : "rectangular")} {width:0.##} x {height:0.##} mm");

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static string Shown(string text)
    {
        var plain = string.Concat(text.Select(c => char.IsControl(c) ? '\uFFFD' : c));
        const int longest = 60, kept = 57;
        return plain.Length <= longest ? plain : plain[..(char.IsHighSurrogate(plain[kept - 1]) ? kept - 1 : kept)] + "...";
    }

    private static string CodePoints(string element) =>
        string.Join(' ', element.EnumerateRunes().Select(rune => Say($"U+{rune.Value:X4}")));
}
