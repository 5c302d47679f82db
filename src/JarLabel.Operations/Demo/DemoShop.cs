namespace JarLabel.Operations.Demo;

/// <summary>Builds an invented shop with an invented year in it, to look at and to try things on. The same every time, but for the number
/// that tells its ledger from every other.</summary>
public static class DemoShop
{
    private const string CardStock = "card-101.6x152.4";
    private static readonly JarNumber Lived = JarNumber.From(1);
    private static readonly JarNumber Fresh = JarNumber.From(8);

    /// <summary>The shop in a folder that is new or empty; a problem where it is not, and nothing there is touched.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="usual">The shop that would be used otherwise; none of its own rooms is filled.</param>
    public static Result<DemoReport> Build(string folder, ShopFolder usual) => new FileGuard(usual).LookAtFolder(folder).Then(Build);

    private static Result<DemoReport> Build(string full)
    {
        if (File.Exists(full) || (Directory.Exists(full) && Directory.EnumerateFileSystemEntries(full).Any()))
        {
            return OperationProblems.DemoNeedsRoom(full);
        }

        return ShopFolder.At(full).Then(shop => ShopSettingsFile.Write(shop, Settings)).Then(_ => Live(full)).Then(_ => Print(full)).Then(_ => Report(full));
    }

    private static ShopSettings Settings => new()
    {
        Name = "Larkwood Finishing Room",
        Contact = "ask at the green door",
        Shelves = [new Shelf("bench", Temperature.FromDegreesCelsius(20)), new Shelf("cellar", Temperature.FromDegreesCelsius(14))],
    };

    private static Result<string> Live(string folder)
    {
        foreach (var (day, step) in DemoYear.Steps)
        {
            if (On(folder, day).Then(step).Problems is { Count: > 0 } problems)
            {
                return Result<string>.Failed(problems);
            }
        }

        return folder;
    }

    /// <summary>What hangs and stands about at the end of the year: a notice for each shelf, a card, pictures of a label and of the card.</summary>
    private static Result<string> Print(string folder) => On(folder, DemoYear.Last).Then(bench =>
    {
        var pictures = Path.Combine(folder, "previews");
        Directory.CreateDirectory(pictures);
        Problem[] problems =
        [
            .. Settings.Shelves.SelectMany(shelf => WriteNotice.Do(bench, Notice(shelf.Name)).Problems),
            .. LabelJar.Do(bench, Lived, new LabelChoice("card", CardStock), null).Problems,
            .. LabelJar.Do(bench, Lived, new LabelChoice("card", CardStock), Path.Combine(pictures, "card.png")).Problems,
            .. LabelJar.Do(bench, Fresh, new LabelChoice("wide", "card-85x55"), Path.Combine(pictures, "label.png")).Problems,
        ];
        return problems.Length == 0 ? folder : Result<string>.Failed(problems);
    });

    private static NoticeRequest Notice(string shelf) => new(
        shelf, NoticePaper.Letter, NoticeRequest.UsualDistance, NoticeRequest.UsualRoom, NoticeRequest.UsualEvaporated, NoticeRequest.UsualOver);

    private static Result<DemoReport> Report(string folder) => On(folder, DemoYear.Last).Then(bench => LedgerAccess.Read(bench, view => Result<int>.Of(view.LastNumber(SubjectKind.Jar)))).Then<DemoReport>(jars =>
    {
        string[] files = [.. ((string[])["labels", "previews"]).SelectMany(room => Directory.EnumerateFiles(Path.Combine(folder, room))).Order(StringComparer.Ordinal)];
        return new DemoReport(folder, jars, files, DateOnly.ParseExact(DemoYear.Last, "yyyy-MM-dd", CultureInfo.InvariantCulture));
    });

    private static Result<Workbench> On(string folder, string day) =>
        Workbench.Open(new WorkbenchOptions(folder, DateTime.ParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture).AddHours(10)), _ => null);
}

/// <summary>What a demo shop holds once it is built.</summary>
/// <param name="Folder">Where it is.</param>
/// <param name="Jars">How many jars were filled.</param>
/// <param name="Files">The files written, in order of their names.</param>
/// <param name="Until">The day after which nothing more happens in it.</param>
public sealed record DemoReport(string Folder, int Jars, IReadOnlyList<string> Files, DateOnly Until);
