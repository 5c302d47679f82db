namespace JarLabel.Operations.Notices;

/// <summary>Writes the wall notice for a shelf as it stands now. It changes no jar, so the ledger keeps nothing of it.</summary>
public static class WriteNotice
{
    internal const string Design = "notice";

    /// <summary>The solvent that the air of an empty shelf is reckoned with.</summary>
    private const string UsualSolvent = "ethanol-95";

    /// <summary>The written notice, or every reason why not; then nothing was written.</summary>
    public static Result<WrittenNotice> Do(Workbench bench, NoticeRequest request)
    {
        return AirQuestion.Of(request.Evaporated, request.Room, request.Over, mixingFactor: AirQuestion.UsualMixingFactor).Then(question =>
            bench.Settings.Shelf(request.Shelf).Then(shelf => LabelComposer.Open(bench).Then(composer =>
                LedgerAccess.Record(bench, step => Write(bench, request, question, shelf, composer, step)))));
    }

    private static Result<WrittenNotice> Write(
        Workbench bench, NoticeRequest request, AirQuestion question, Shelf shelf, LabelComposer composer, LedgerStep step) =>
        ShelfContents.Jars(step, shelf.Name).Then(jars => ShelfContents.Bottles(step, shelf.Name).Then(bottles => composer.Choose(Stock(request.Paper)).Then(stock =>
        {
            var standing = ShelfContents.Stock(bench, jars, bottles);
            var air = WorstAir(bench, [.. jars.SelectMany(jar => jar.Contents.Solvents.Select(solvent => solvent.Solvent)), .. bottles.Select(bottle => bottle.Solvent)], question);
            var path = request.File ?? Path.Combine(bench.Folder.Labels, $"{stock.Sheet.Id}-{FileWord(shelf.Name)}.pdf");
            return composer.Press(ShelfNotice.For(Facts(bench, shelf, standing, air)), stock, 1, request.Distance).Then(pressed =>
                LabelFiles.Bytes(path, [pressed.Page], $"Solvent shelf {shelf.Name}", bench.Now).Then<WrittenNotice>(bytes =>
                {
                    step.Write(bench, path, bytes);
                    return new WrittenNotice(path, stock.Sheet.Id, shelf.Name, request, standing, air, [.. ShelfCautions.Of(bench, shelf.Name, standing), .. StorageCautions.OfAll(bench, jars, bottles), .. air is null ? [] : AirCautions.Of(air)]);
                }));
        })));

    private static NoticeFacts Facts(Workbench bench, Shelf shelf, ShelfStock stock, AirAssessment? air) => new(
        shelf.Name,
        DateOnly.FromDateTime(bench.Now),
        stock,
        air,
        bench.Rules,
        bench.Catalog,
        bench.Metric,
        bench.Settings.Name,
        bench.Settings.Contact)
    { PoisonCenter = bench.Settings.PoisonCenter };

    /// <summary>The air is reckoned with the solvents on the shelf that are the worst to breathe and the first to burn.</summary>
    private static AirAssessment? WorstAir(Workbench bench, IReadOnlyList<string> solvents, AirQuestion question) => RoomAirAssessor.Worst(solvents
        .DefaultIfEmpty(UsualSolvent)
        .Distinct()
        .Select(id => RoomAirAssessor.Assess(bench.Catalog.SolventOf(id), question, bench.Rules))
        .Where(answer => answer.Ok)
        .Select(answer => answer.Require()));

    /// <summary>The stock and design of a notice.</summary>
    public static LabelChoice Stock(NoticePaper paper) => new(Design, SheetFor(paper));

    private static string SheetFor(NoticePaper paper) => paper == NoticePaper.A4 ? "notice-a4" : "notice-letter";

    private static string FileWord(string shelf) => string.Concat(shelf.Select(c => char.IsAsciiLetterOrDigit(c) ? char.ToLowerInvariant(c) : '-'));
}

/// <summary>The paper of a wall notice, on its side.</summary>
public enum NoticePaper
{
    /// <summary>297 x 210 mm.</summary>
    A4,

    /// <summary>11 x 8½ inches.</summary>
    Letter,
}

/// <summary>A notice as written.</summary>
/// <param name="File">The file's full path.</param>
/// <param name="Sheet">The stock's id.</param>
/// <param name="Shelf">The shelf's name.</param>
/// <param name="Request">What was asked.</param>
/// <param name="Stock">What stands on the shelf.</param>
/// <param name="Air">What the worst of it does to the room's air; null when nothing is known of its vapour.</param>
/// <param name="Cautions">Storage limits that the shelf passes, and what is wrong with the air.</param>
public sealed record WrittenNotice(
    string File, string Sheet, string Shelf, NoticeRequest Request, ShelfStock Stock, AirAssessment? Air, IReadOnlyList<Problem> Cautions);
