using JarLabel.Core.Catalog;
using JarLabel.Core.Hazards;

namespace JarLabel.Web.Forms;

/// <summary>The form of a can: rows of a substance and its percent, read by the same reader as on the command line.</summary>
internal static class CanEntry
{
    /// <summary>As many substances as a sheet of alcohol names, and some to spare.</summary>
    internal const int Rows = 8;

    internal static string Substance(int row) => string.Create(CultureInfo.InvariantCulture, $"substance-{row}");

    internal static string Percent(int row) => string.Create(CultureInfo.InvariantCulture, $"percent-{row}");

    /// <summary>The can entered, or everything that hinders it.</summary>
    internal static Result<CanOutcome> Do(Workbench bench, FormValues entry)
    {
        var name = entry.Needed("name", "What it is called here", "the green can", ValueReader.PrintedUpTo(CanWords.LongestName));
        var measure = entry.Ticked("by-volume") ? Measure.Volume : Measure.Weight;
        (string Of, string Share, string? Where)[] rows =
        [
            .. Enumerable.Range(1, Rows)
                .Select(row => (Of: entry.Text(Substance(row)) ?? "", Share: entry.Text(Percent(row)) ?? "", Where: (string?)Percent(row)))
                .Where(row => row.Of.Length > 0 || row.Share.Length > 0),
        ];
        if (rows.Length == 0)
        {
            entry.Refuse(TypingProblems.Empty(Substance(1), "What is in it", "ethanol 30-60 and methanol 30-60"));
            return entry.Then<CanOutcome>(() => throw new InvalidOperationException("It was refused."));
        }

        var contents = entry.Taken(ContentsText.Read(rows, measure, bench.Catalog, "contains"));
        return entry.Then(() => CanBook.Add(bench, new CanRequest(name, contents)));
    }
}
