using System.Globalization;
using System.Text.Json;
using JarLabel.Core;
using JarLabel.Core.Quantities;
using JarLabel.Store;
using JarLabel.Store.Index;
using UnitsNet;

namespace JarLabel.Hand;

/// <summary>The simplest jars there can be, so that tests of the ledger need no knowledge of shellac: the first event says how much was
/// mixed, every later one may add to it or end it.</summary>
public sealed class PlainJars(int version = 1) : IJarReader
{
    public int Version => version;

    public IReadOnlyList<Problem> Faults(EventRow row)
    {
        return row.Of.Kind == SubjectKind.Sheet || row.Kind is "Mixed" or "Thinned" or "Labelled" or "Moved" or "Discarded"
            ? []
            : [new Problem("JL999", $"The event {row.Kind} is not known.")];
    }

    public Result<JarEntry> Fold(IReadOnlyList<EventRow> events)
    {
        if (events[0].Kind != "Mixed")
        {
            return new Problem("JL998", $"Jar {events[0].Of.Number} begins with {events[0].Kind}.");
        }

        var mixed = DateOnly.Parse(events[0].At[..10], CultureInfo.InvariantCulture);
        var shelf = events.Select(e => Text(e, "shelf")).Last(name => name is not null)!;
        return new JarEntry(
            events[0].Of.Number, events[^1].Revision, shelf, "garnet", "ethanol-95", PoundCut.FromPoundsPerUsGallon(1.5), Volume.FromMilliliters(events.Sum(e => Number(e, "ml"))), mixed,
            mixed.ToDateTime(new TimeOnly(18, 0)), mixed.AddMonths(4), mixed.AddDays((int)Number(events[0], "keeps")), null,
            events.All(e => e.Kind != "Discarded"));
    }

    private static string? Text(EventRow row, string name)
    {
        using var body = JsonDocument.Parse(row.Body);
        return body.RootElement.TryGetProperty(name, out var found) ? found.GetString() : null;
    }

    private static double Number(EventRow row, string name)
    {
        using var body = JsonDocument.Parse(row.Body);
        return body.RootElement.TryGetProperty(name, out var found) ? found.GetDouble() : 0;
    }
}
