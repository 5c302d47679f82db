using JarLabel.Bench.Mixing;
using JarLabel.Bench.Typing;
using JarLabel.Core;
using JarLabel.Core.Jars;
using JarLabel.Core.Mixing;
using JarLabel.Core.Quantities;

namespace JarLabel.Bench.Lists;

/// <summary>One row of a list of batches: columns are called like the options of <c>mix</c>.</summary>
internal static class BatchRow
{
    /// <summary>All columns there are.</summary>
    internal static readonly IReadOnlyList<string> Columns =
    [
        "grade", "solvent", "cut", "pour", "flakes", "makes", "fill", "container", "material", "form", "flake-date", "temp", "shelf", "by", "job", "note", JarList.Copies,
    ];

    /// <summary>Columns there must be; beside them one that says how much.</summary>
    internal static readonly IReadOnlyList<string> Needed = ["grade", "solvent"];

    /// <summary>How many labels the jar gets.</summary>
    internal static int? Copies(ListRow row) => row.Value(JarList.Copies, Words.WholeNumber(1, JarList.MostCopies));

    /// <summary>The batch as it is wanted; faults stay with the row.</summary>
    internal static MixRequest Request(Workbench bench, ListRow row)
    {
        var fill = row.Value("fill", VolumeText.Read);
        var order = new Order(
            row.Value("cut", CutText.Read), row.Value("pour", VolumeText.Read), row.Value("flakes", MassText.Read), row.Value("makes", VolumeText.Read), fill);
        return new MixRequest(
            row.Needed("grade", "garnet", bench.Catalog.Grades.Named),
            row.Needed("solvent", "ethanol-95", bench.Catalog.Solvents.Named),
            order,
            new Container(row.Value("material", Words.Material) ?? ContainerMaterial.Glass, row.Value("container", VolumeText.Read) ?? fill),
            row.Fact("form", bench.Catalog.Forms.Named),
            row.Value("flake-date", (text, where) => Past(bench, text, where)),
            row.Value("temp", TemperatureText.Read),
            row.Text("shelf"),
            row.Fact("by", Words.PrintedUpTo(60)),
            row.Fact("job", Words.PrintedUpTo(120)),
            row.Fact("note", Words.PrintedUpTo(500)));
    }

    private static Result<DateOnly> Past(Workbench bench, string text, string where) => Words.Day(text, where).Then<DateOnly>(day =>
        day > DateOnly.FromDateTime(bench.Now) ? TypingProblems.FlakesFromTheFuture(text, where) : day);
}
