using JarLabel.Operations.Scanning;
using JarLabel.Operations.Supplies;

namespace JarLabel.Web.Serving;

/// <summary>The pages that only look.</summary>
internal static class Reading
{
    private const string NotANumber = "JL141", NotACode = "JL184";
    private const int JarsOnAPage = 50;
    private const int MostLookedAt = 1000;

    /// <summary>A jar by its number, with or without check digit and the label's revision.</summary>
    internal static Result<string> Jar(Workbench bench, string id) => Find(bench, id).Then<string>(scanned => JarPage.Of(bench, scanned, Frame.Served));

    internal static Result<Scanned> Find(Workbench bench, string id) => ScanJar.Find(bench, LabelCode.Read($"JAR {id}") is null ? id : $"JAR {id}");

    /// <summary>All jars, or the one that was looked for.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="asked">What the address asks for.</param>
    /// <param name="reached">The address by which these pages were reached, where telephones come and labels' codes may lead to them; else null.</param>
    internal static Reply Shelf(Workbench bench, IQueryCollection asked, string? reached)
    {
        if (Text(asked, "find") is { } typed)
        {
            // A bag or bottle has no page of its own; what stands behind its code is said where codes are read.
            return SupplyCode.Read(typed) is not null ? Reply.SeeOther($"/scan?what={Uri.EscapeDataString(typed)}") : ScanJar.Find(bench, typed).TryGet(out var scanned, out var problems)
                ? Reply.SeeOther(Address(scanned))
                : problems is [{ Code: NotANumber or NotACode }] ? Searched(bench, typed, reached) : Reply.NotFound(problems);
        }

        return Reply.Of(
            bench.Settings.Shelf(Text(asked, "shelf"))
                .Then(_ => LedgerAccess.Read(bench, view => Sight(bench, view, Text(asked, "shelf"), Text(asked, "due") is not null, After(Text(asked, "after")))))
                .Then<string>(sight => ShelfPage.Of(bench, sight, reached)),
            problems => Reply.Refused(400, problems));
    }

    /// <summary>The jars that words fit; the one, where it is one; the field to look again, where it is none.</summary>
    private static Reply Searched(Workbench bench, string typed, string? reached) =>
        !LedgerAccess.Read(bench, view => JarSearch.Of(bench, view, typed)).TryGet(out var list, out var problems) ? Reply.Refused(503, problems)
        : list.Jars is [var only] ? Reply.SeeOther($"/J/{JarNumber.From(only.Number)}")
        : Reply.Page(ShelfPage.Of(bench, new ShelfView(null, false, list, false, [], [], [], [], []) { Find = typed }, reached), list.Jars.Count == 0 ? 404 : 200);

    /// <summary>The file of the label that was last printed, when it still speaks of the jar as it is.</summary>
    internal static Reply LabelPdf(Workbench bench, string id)
    {
        if (!Find(bench, id).TryGet(out var scanned, out var problems))
        {
            return Reply.NotFound(problems);
        }

        var jar = scanned.Jar.History.Jar;
        var label = scanned.Jar.History.Label;
        return label?.Revision == jar.Revision && Bytes(bench, bench.Folder.Full(label.File)) is { } bytes
            ? new Reply(200, "application/pdf", bytes) { FileName = Path.GetFileName(label.File) }
            : Reply.Refused(404, WebProblems.NoLabelFile($"{jar.Number}"));
    }

    /// <summary>A file that a step wrote: a bag's label, a notice.</summary>
    internal static Reply LabelFile(Workbench bench, string name) =>
        Path.GetFileName(name) == name && Bytes(bench, Path.Combine(bench.Folder.Labels, name)) is { } bytes
            ? new Reply(200, "application/pdf", bytes) { FileName = name }
            : Reply.Refused(404, WebProblems.NoSuchPage($"/labels/{name}"));

    /// <summary>Only what lies in the shop's own folder of labels is handed out; a label may have been written anywhere.</summary>
    private static byte[]? Bytes(Workbench bench, string file)
    {
        try
        {
            return bench.Folder.HasAmongLabels(file) && file.EndsWith(".pdf", StringComparison.OrdinalIgnoreCase)
                ? File.ReadAllBytes(file)
                : null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    internal static string Address(Scanned scanned) =>
        string.Create(CultureInfo.InvariantCulture, $"/J/{scanned.Jar.History.Jar.Number}{(scanned.Revision is { } revision ? $".{revision}" : "")}");

    private static Result<ShelfView> Sight(Workbench bench, LedgerView view, string? shelf, bool due, ShelfMark? after) =>
        Listed(bench, view, shelf, due, after).Then(found => ShelfTotals.Of(view).Then(totals => SupplyBook.Bottles(view).Then(bottles => SupplyBook.Bags(view).Then<ShelfView>(bags =>
            new ShelfView(
                shelf,
                due,
                found with { Jars = [.. found.Jars.Take(JarsOnAPage)] },
                found.Jars.Count > JarsOnAPage,
                totals,
                [.. bottles.Where(bottle => shelf is null || bottle.Shelf == shelf)],
                bags,
                [.. ShelfCautions.Of(bench, view, shelf)],
                [.. found.Cautions, .. ShelfCautions.OfContainers(bench, view, shelf, found.Jars)])))));

    /// <summary>One jar more than a page shows, in the order on record, behind the mark. Those that are due by moved dates are found among all jars, so they are
    /// looked through whole. Where all are on one page, those come first that are due soonest.</summary>
    private static Result<ShelfList> Listed(Workbench bench, LedgerView view, string? shelf, bool due, ShelfMark? after)
    {
        var query = due ? new ShelfQuery(shelf, Take: MostLookedAt) : new ShelfQuery(shelf, After: after, Take: JarsOnAPage + 1);
        return ShelfList.Of(bench, view, query, due ? DateOnly.FromDateTime(bench.Now) : null, soonest: false).Then<ShelfList>(found =>
        {
            JarEntry[] jars = [.. found.Jars.Where(j => after is not { } mark || (j.UseBy, j.Number).CompareTo((mark.UseBy, mark.Number)) > 0).Take(JarsOnAPage + 1)];
            return found with { Jars = after is null && jars.Length <= JarsOnAPage ? [.. found.Known.SoonestFirst(jars)] : jars };
        });
    }

    private static ShelfMark? After(string? text) =>
        text?.Split('.') is [var day, var number]
        && DateOnly.TryParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var useBy)
        && int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var jar)
            ? new ShelfMark(useBy, jar)
            : null;

    private static string? Text(IQueryCollection asked, string name) => asked[name].ToString() is { Length: > 0 } text ? text : null;
}
