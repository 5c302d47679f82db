using System.Globalization;
using JarLabel.Bench;
using JarLabel.Bench.Notices;
using JarLabel.Bench.Recording;
using JarLabel.Bench.Scanning;
using JarLabel.Core;
using JarLabel.Core.Jars;
using JarLabel.Core.Labels;
using JarLabel.Store.Index;
using JarLabel.Web.Pages;
using Microsoft.AspNetCore.Http;

namespace JarLabel.Web.Serving;

/// <summary>The pages that only look.</summary>
internal static class Reading
{
    private const int JarsOnAPage = 50;

    /// <summary>A jar by its number, with or without check digit and the label's revision.</summary>
    internal static Result<string> Jar(Workbench bench, string id) => Find(bench, id).Then<string>(scanned => JarPage.Of(bench, scanned, Frame.Served));

    internal static Result<Scanned> Find(Workbench bench, string id) => ScanJar.Find(bench, LabelCode.Read($"JAR {id}") is null ? id : $"JAR {id}");

    internal static Reply Shelf(Workbench bench, IQueryCollection asked)
    {
        if (Text(asked, "find") is { } typed)
        {
            return ScanJar.Find(bench, typed).TryGet(out var scanned, out var problems)
                ? Reply.SeeOther(Address(scanned))
                : Reply.NotFound(problems);
        }

        var query = new ShelfQuery(Text(asked, "shelf"), Text(asked, "due") is null ? null : DateOnly.FromDateTime(bench.Now), After(Text(asked, "after")), JarsOnAPage + 1);
        return Reply.Of(bench.Settings.Shelf(query.Shelf).Then(_ => List(bench, query)).Then<string>(list => ShelfPage.Of(bench, list)), problems => Reply.Refused(400, problems));
    }

    /// <summary>The file of the label that was last printed, when it still speaks of the jar as it is.</summary>
    internal static Reply LabelPdf(Workbench bench, string id)
    {
        if (!Find(bench, id).TryGet(out var scanned, out var problems))
        {
            return Reply.NotFound(problems);
        }

        var jar = scanned.Jar.History.Jar;
        var label = scanned.Jar.History.Events.Select(e => e.Event).OfType<Labelled>().LastOrDefault();
        return label?.Revision == jar.Revision && Bytes(bench, label) is { } bytes
            ? new Reply(200, "application/pdf", bytes) { FileName = Path.GetFileName(label.File) }
            : Reply.Refused(404, WebProblems.NoLabelFile($"{jar.Number}"));
    }

    /// <summary>Only what lies in the shop's own folder of labels is handed out; a label may have been written anywhere.</summary>
    private static byte[]? Bytes(Workbench bench, Labelled label)
    {
        var file = bench.Folder.Full(label.File);
        try
        {
            return file.StartsWith(bench.Folder.Labels + Path.DirectorySeparatorChar, StringComparison.Ordinal) && file.EndsWith(".pdf", StringComparison.OrdinalIgnoreCase)
                ? File.ReadAllBytes(file)
                : null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static string Address(Scanned scanned) =>
        string.Create(CultureInfo.InvariantCulture, $"/J/{scanned.Jar.History.Jar.Number}{(scanned.Revision is { } revision ? $".{revision}" : "")}");

    private static Result<ShelfList> List(Workbench bench, ShelfQuery query) => LedgerDesk.Read(bench, view =>
    {
        var found = view.Shelf(query);
        return Result<ShelfList>.Of(new ShelfList(query, [.. found.Take(JarsOnAPage)], found.Count > JarsOnAPage, view.ShelfTotals(), ShelfCautions.Of(bench, view, query.Shelf)));
    });

    private static ShelfMark? After(string? text) =>
        text?.Split('.') is [var day, var number]
        && DateOnly.TryParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var useBy)
        && int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var jar)
            ? new ShelfMark(useBy, jar)
            : null;

    private static string? Text(IQueryCollection asked, string name) => asked[name].ToString() is { Length: > 0 } text ? text : null;
}
