namespace JarLabel.Layout.Checks;

/// <summary>Finds codes that could not be scanned: too small, crowded, or saying something else.</summary>
internal static class CodeCheck
{
    /// <summary>Smallest module a phone reads surely, mm.</summary>
    private const double LeastModule = 0.40;

    /// <summary>Fewest printer dots a module.</summary>
    private const double LeastDots = 4;

    // A hundredth of a dot: lengths were rounded to whole dots before.
    private const double Rounding = 0.01;

    internal static IEnumerable<Problem> Problems(PlacedLabel label, ITextRuler ruler, Func<QrModules, string?>? readBack) =>
        label.Marks.OfType<QrMark>().SelectMany(code => Problems(label, code, ruler, readBack));

    private static IEnumerable<Problem> Problems(PlacedLabel label, QrMark code, ITextRuler ruler, Func<QrModules, string?>? readBack)
    {
        var where = $"{label.Design.Id}/{code.Box}";
        var dots = code.Module / 25.4 * label.Area.Dpi;
        if (code.Module < LeastModule || dots < LeastDots - Rounding)
            yield return LayoutProblems.CodeTooSmall(where, code.Module, dots);
        foreach (var mark in label.Marks.Where(mark => Crosses(mark, code, ruler)))
            yield return LayoutProblems.QuietZoneCrossed(where, mark.Box);
        if (readBack is not null && readBack(code.Modules) is var read && read != code.Modules.Payload)
            yield return LayoutProblems.CodeReadsDifferently(where, code.Modules.Payload, read);
    }

    // White grounds may lie under the code.
    private static bool Crosses(Mark mark, QrMark code, ITextRuler ruler) =>
        mark != code && mark is not BarMark { Ink: Ink.White } && Extent.Of(mark, ruler).Over(Extent.OfQuietZone(code)) > 0.05;
}
