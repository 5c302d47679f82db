using JarLabel.Printing;

namespace JarLabel.Operations.Printing;

/// <summary>Holds the places of a sheet against the edges that a printer cannot print. Nothing is printed in the outer white of a label, so a
/// label may reach that far into them.</summary>
public static class MarginCheck
{
    /// <summary>The white inside every label's edge, mm: 2, and 2.5 on rounds.</summary>
    private const double White = 2;
    private const double WhiteOnRounds = 2.5;

    /// <summary>A sixth of an inch on each side.</summary>
    private static readonly PaperMargins UsualMargins = new(4.23, 4.23, 4.23, 4.23);

    /// <summary>A tenth of a millimetre is less than a printer's feed is true to.</summary>
    private const double Slack = 0.1;

    /// <summary>The caution where places reach into an edge; none otherwise.</summary>
    public static IEnumerable<Problem> Of(string uri, Sheet sheet, PrinterFacts facts, IReadOnlyList<int> places)
    {
        if (facts.MarginsOf(sheet.PaperWidth, sheet.PaperHeight) is not { } margins)
        {
            yield break;
        }

        var cut = places.Where(p => p >= 1 && p <= sheet.Places).Select(p => (Place: p, Missing: Missing(sheet, margins, p))).Where(p => p.Missing > Slack).ToArray();
        if (cut.Length > 0)
        {
            yield return PrintingProblems.InMargin(uri, [.. cut.Select(c => c.Place)], cut.Max(c => c.Missing));
        }
    }

    /// <summary>The same before any printer is known, with the edge that common desktop printers leave white. A roll's printer prints to its edge.</summary>
    /// <param name="file">The sheet's file.</param>
    /// <param name="sheet">The sheet.</param>
    public static IEnumerable<Problem> Usual(string file, Sheet sheet)
    {
        int[] cut = sheet.Places == 1 ? [] : [.. Enumerable.Range(1, sheet.Places).Where(place => Missing(sheet, UsualMargins, place) > Slack)];
        if (cut.Length > 0)
        {
            yield return OperationProblems.InUsualMargin(file, cut, cut.Max(place => Missing(sheet, UsualMargins, place)), UsualMargins.Left);
        }
    }

    private static double Missing(Sheet sheet, PaperMargins margins, int place)
    {
        var (area, white) = (sheet.AreaAt(place), sheet.Shape == LabelShape.Round ? WhiteOnRounds : White);
        return ((double[])
        [
            margins.Left - (area.X + white),
            margins.Top - (area.Y + white),
            area.X + area.Width - white - (sheet.PaperWidth - margins.Right),
            area.Y + area.Height - white - (sheet.PaperHeight - margins.Bottom),
        ]).Max();
    }
}
