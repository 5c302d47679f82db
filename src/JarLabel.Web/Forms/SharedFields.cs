using JarLabel.Bench;
using JarLabel.Bench.Labels;
using JarLabel.Bench.Printing;
using JarLabel.Bench.Supplies;
using JarLabel.Bench.Typing;
using JarLabel.Core.Catalog;
using JarLabel.Core.Jars;
using JarLabel.Core.Quantities;
using JarLabel.Store.Printers;
using UnitsNet;

namespace JarLabel.Web.Forms;

/// <summary>Fields that several forms share, and what they mean.</summary>
internal static class SharedFields
{
    private const string PrintTo = "--print-to";
    private const int MostPlaces = 200;

    internal static IReadOnlyList<Field> Container(Jar? jar) =>
    [
        new("--container", jar is null ? "The jar holds" : "Into a larger jar that holds", "to the brim, such as 500 mL or 1 pt") { Seldom = jar is not null },
        new("--material", "The jar is of") { Choices = [.. ContainerMaterials.ByWord.Keys.Select(word => (word, word.Replace('-', ' ')))], Seldom = true },
    ];

    internal static Field Temperature { get; } = new("--temp", "Temperature at the bench", "20 C when left empty; 68F or 22 C") { Seldom = true };

    internal static Field Form(Workbench bench) =>
        new("--form", "Form of the flakes") { Choices = [("", "the usual one"), .. bench.Catalog.Forms.Rows.Select(form => (form.Id, form.Id))], Seldom = true };

    /// <summary>The bags there are; no field where there is none.</summary>
    internal static IEnumerable<Field> Bag(Workbench bench) => SupplyBook.Bags(bench).TryGet(out var bags, out _) && bags.Any(bag => !bag.Unfit)
        ? [new("--bag", "From the bag", "its grade and date are known then") { Choices = [("", "none in the ledger"), .. bags.Where(bag => !bag.Unfit).Select(bag => ($"{bag.Number}", SupplyChoiceWords.Of(bench, bag)))], Seldom = true }]
        : [];

    /// <summary>The bottles there are; no field where there is none.</summary>
    internal static IEnumerable<Field> Bottle(Workbench bench) => SupplyBook.Bottles(bench).TryGet(out var bottles, out _) && bottles.Count > 0
        ? [new("--bottle", "From the bottle") { Choices = [("", "none in the ledger"), .. bottles.Select(bottle => ($"{bottle.Number}", SupplyChoiceWords.Of(bench, bottle)))], Seldom = true }]
        : [];

    internal static Field FlakeDate { get; } = new("--flake-date", "Flakes made or bought on", "year-month-day, such as 2025-10-01") { Seldom = true };

    internal static IReadOnlyList<Field> Label(Workbench bench) =>
    [
        new("--no-label", "No new label") { Tick = true, Seldom = true },
        .. LabelChoice(bench),
    ];

    internal static IReadOnlyList<Field> LabelChoice(Workbench bench, bool seldom = true) => LabelPress.Open(bench).TryGet(out var press, out _)
        && press.Designs().TryGet(out var designs, out _) && press.Sheets().TryGet(out var sheets, out _)
        ?
        [
            .. PrintOn(bench),
            new("--sheet", "Label stock") { Choices = [("", "the shop's usual"), .. sheets.Select(sheet => (sheet.Id, sheet.Title))], Seldom = seldom },
            new("--design", "Label design") { Choices = [("", "the usual for that stock"), .. designs.Select(design => (design.Id, design.Title))], Seldom = seldom },
            new("--start", "Place on the sheet", "the next free one when left empty") { Seldom = true },
            .. LaidOutFor(bench),
        ]
        : [];

    /// <summary>The printers there are; no field where there is none.</summary>
    private static IEnumerable<Field> PrintOn(Workbench bench) => Book(bench).Names() is { Count: > 0 } names
        ? [new(PrintTo, "Print it on") { Choices = [("", "no printer: a PDF to take"), .. names.Select(name => (name, name))] }]
        : [];

    /// <summary>For a PDF that is printed elsewhere: the printers that something was measured on.</summary>
    private static IEnumerable<Field> LaidOutFor(Workbench bench) =>
        CalibrationFile.Read(bench.Folder).TryGet(out var measured, out _) && measured.Select(one => one.Printer).OfType<string>().Distinct().ToArray() is { Length: > 0 } names
            ? [new("--printer", "Laid out for", "places as measured on that printer") { Choices = [("", "the printer it goes to"), .. names.Select(name => (name, name))], Seldom = true }]
            : [];

    internal static Field Solvent(Workbench bench, Jar? jar) => new("--solvent", "Alcohol")
    {
        Choices = [.. ToChoose(jar), .. bench.Catalog.Solvents.Rows.Select(solvent => (solvent.Id, solvent.Name))],
        First = jar?.Contents.Solvents.Select(part => part.Solvent).FirstOrDefault(),
        Seldom = jar is not null,
    };

    internal static Field Grade(Workbench bench, Jar? jar) => new("--grade", "Flakes")
    {
        Choices = [.. ToChoose(jar), .. bench.Catalog.Grades.Rows.Select(grade => (grade.Id, grade.Name))],
        First = jar?.Contents.Resins.Select(part => part.Grade).FirstOrDefault(),
        Seldom = jar is not null,
    };

    /// <summary>Nothing is chosen beforehand for a new jar: what nobody chose would go on its label.</summary>
    private static IEnumerable<(string, string)> ToChoose(Jar? jar) => jar is null ? [("", "choose")] : [];

    internal static Container ContainerOf(Entry entry, Volume? holds = null) =>
        new(entry.Value("--material", Words.Material) ?? ContainerMaterial.Glass, entry.Value("--container", VolumeText.Read) ?? holds);

    /// <summary>The larger jar where one was named, else null.</summary>
    internal static Container? OtherContainer(Entry entry) => ContainerOf(entry) is { Holds: not null } named ? named : null;

    internal static LabelChoice? LabelOf(Entry entry)
    {
        var choice = LabelChoiceOf(entry);
        return entry.Ticked("--no-label") ? null : choice;
    }

    internal static LabelChoice LabelChoiceOf(Entry entry) =>
        new(entry.Text("--design"), entry.Text("--sheet"), entry.Value("--start", Words.WholeNumber(1, MostPlaces))) { Printer = entry.Text("--printer") ?? entry.Text(PrintTo), LaidOutOnly = entry.Text("--printer") is not null };

    /// <summary>The printer that was chosen for the label, if one was and a label is wanted.</summary>
    internal static PrintRequest? PrintingOf(Entry entry) => entry.Text(PrintTo) is { } printer && !entry.Ticked("--no-label")
        ? new PrintRequest(printer, entry.Text("--sheet"), entry.Text("--design")) { Where = PrintTo }
        : null;

    internal static PrinterBook Book(Workbench bench) => new(bench, Environment.GetEnvironmentVariable);

    /// <summary>The flakes' own date, which does not lie ahead.</summary>
    internal static DateOnly? FlakeDay(Entry entry, Workbench bench)
    {
        var day = entry.Value("--flake-date", Words.Day);
        if (day > DateOnly.FromDateTime(bench.Now))
        {
            entry.Refuse(TypingProblems.FlakesFromTheFuture(entry.Text("--flake-date")!, "--flake-date"));
        }

        return day;
    }

    internal static LacForm? FormOf(Entry entry, Workbench bench) => entry.Fact("--form", bench.Catalog.Forms.Named);
}
