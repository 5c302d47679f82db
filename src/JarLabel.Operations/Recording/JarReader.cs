namespace JarLabel.Operations.Recording;

/// <summary>Tells the ledger how to read an event and what a jar's events add up to.</summary>
public sealed class JarReader : IJarReader
{
    /// <summary>The one reader; it keeps nothing.</summary>
    public static JarReader Instance { get; } = new();

    /// <inheritdoc/>
    public int Version => 4;

    /// <inheritdoc/>
    public IReadOnlyList<Problem> Faults(EventRow row)
    {
        return row.Of.Kind switch
        {
            SubjectKind.Jar => Read(row).Problems,
            SubjectKind.Bag or SubjectKind.Bottle => SupplyBook.Read(row).Problems,
            _ => [],
        };
    }

    /// <inheritdoc/>
    public IReadOnlyList<Problem> Refusals(EventRow row)
    {
        return row.Of.Kind switch
        {
            SubjectKind.Jar => Read(row) is var read && read.TryGet(out var happened, out var problems) ? [.. JarEventCheck.Faults(happened, ""), .. Headed(row, happened.Name, happened.At)] : read.Problems,
            SubjectKind.Bag or SubjectKind.Bottle => SupplyBook.Read(row) is var read && read.TryGet(out var happened, out _) ? [.. SupplyEventCheck.Faults(happened, ""), .. Headed(row, happened.Name, happened.At)] : read.Problems,
            _ => [],
        };
    }

    /// <inheritdoc/>
    public IReadOnlyList<Problem> LifeFaults(IReadOnlyList<EventRow> events) => SupplyBook.LifeFaults(events);

    /// <summary>What stands outside the event says the same as the event.</summary>
    private static IEnumerable<Problem> Headed(EventRow row, string name, DateTime at)
    {
        if (row.Kind != name || !at.ToString("yyyy-MM-ddTHH:mm:ss", CultureInfo.InvariantCulture).StartsWith(row.At, StringComparison.Ordinal))
        {
            yield return OperationProblems.OtherHead(row.Kind, row.At, name, at);
        }
    }

    /// <inheritdoc/>
    public Result<JarEntry> Fold(IReadOnlyList<EventRow> events) => JarHistory.Of(JarNumber.From(events[0].Of.Number), events).Then(history => Entry(history.Jar));

    /// <summary>The event in a row.</summary>
    internal static Result<JarEvent> Read(EventRow row) => JarEventJson.Read(row.Body, string.Create(CultureInfo.InvariantCulture, $"event {row.Sequence}"));

    private static Result<JarEntry> Entry(Jar jar) => new JarEntry(
        jar.Number.Value,
        jar.Revision,
        jar.Shelf,
        JarEntry.Joined(jar.Held.Resins.Select(resin => resin.Grade)),
        JarEntry.Joined(jar.Held.Solvents.Select(solvent => solvent.Solvent)),
        jar.Contents.Cut,
        jar.Contents.Liquid,
        DateOnly.FromDateTime(jar.MixedAt),
        jar.Dates.Ready.AddTicks(-(jar.Dates.Ready.Ticks % TimeSpan.TicksPerMinute)), // the list keeps minutes
        jar.Dates.TestFrom,
        jar.Dates.UseBy,
        jar.Test is { } test ? test with { OfMother = false, At = null } : null,
        jar.OnShelf);
}
