using JarLabel.Core.Catalog;
using JarLabel.Core.Hazards;

namespace JarLabel.Web.Forms;

/// <summary>The form of a can: rows in which a substance is chosen and its percent typed.</summary>
internal static class CanEntry
{
    /// <summary>As many substances as a sheet of alcohol names, and some to spare.</summary>
    private const int Rows = 8;

    private const string Name = "name", NameLabel = "What it is called here", NameHint = "the green can", ByVolume = "by-volume", PercentHint = "30-60, 5, <3, >=50, rest";

    /// <summary>What it is called and how it is measured, each a field by itself.</summary>
    internal static IReadOnlyList<FormField> Head(FormValues entry) =>
    [
        new(Name, NameLabel, NameHint) { Value = entry.Text(Name) },
        Chosen(new(ByVolume, "The percentages are"), entry, [("", "by weight, as on most sheets"), ("yes", "by volume")]),
    ];

    /// <summary>The rows of a substance and its percent.</summary>
    internal static IReadOnlyList<(FormField Of, FormField Share)> Contents(Workbench bench, FormValues entry)
    {
        (string, string)[] substances = [("", "none"), .. bench.Catalog.Substances.Rows.Where(s => s.Id != Core.Catalog.Substance.ResinId).Select(s => (s.Id, s.Name))];
        return [.. Enumerable.Range(1, Rows).Select(row => (
            Chosen(new(Substance(row), SubstanceLabel(row)), entry, substances),
            new FormField(Percent(row), PercentLabel(row), row == 1 ? PercentHint : null) { Value = entry.Text(Percent(row)) }))];
    }

    /// <summary>The can entered, or everything that hinders it, each at its field.</summary>
    internal static Result<CanOutcome> Do(Workbench bench, FormValues entry)
    {
        var name = entry.Needed(Name, NameLabel, NameHint, ValueReader.PrintedUpTo(CanWords.LongestName));
        var measure = entry.Ticked(ByVolume) ? Measure.Volume : Measure.Weight;
        ContentsRow[] rows =
        [
            .. Enumerable.Range(1, Rows)
                .Select(row => new ContentsRow(entry.Text(Substance(row)) ?? "", entry.Text(Percent(row)) ?? "", Substance(row), Percent(row)))
                .Where(row => row.Of.Length > 0 || row.Share.Length > 0),
        ];
        if (rows.Length == 0)
        {
            entry.Refuse(TypingProblems.Empty(Substance(1), SubstanceLabel(1), "ethanol"));
            return entry.Then<CanOutcome>(() => throw new InvalidOperationException("It was refused."));
        }

        var contents = entry.Taken(ContentsText.Read(rows, measure, bench.Catalog));
        return entry.Then(() => CanBook.Add(bench, new CanRequest(name, contents)));
    }

    private static FormField Chosen(FormField field, FormValues entry, IReadOnlyList<(string Value, string Words)> choices) => field with { Choices = choices, Value = entry.Text(field.Name) ?? "" };

    private static string Substance(int row) => string.Create(CultureInfo.InvariantCulture, $"substance-{row}");

    private static string SubstanceLabel(int row) => string.Create(CultureInfo.InvariantCulture, $"Substance {row}");

    private static string Percent(int row) => string.Create(CultureInfo.InvariantCulture, $"percent-{row}");

    private static string PercentLabel(int row) => string.Create(CultureInfo.InvariantCulture, $"Its percent {row}");
}
