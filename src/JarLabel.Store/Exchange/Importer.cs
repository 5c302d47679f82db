namespace JarLabel.Store.Exchange;

/// <summary>Takes exported events into the ledger, inside one transaction of the ledger's: all of them, or none and every problem with
/// its line. An event the ledger has already is compared; events beyond its end are added. They are held against the rules of what is recorded here, and a
/// file of any length takes no more memory than its longest line may.</summary>
internal sealed class Importer(Database database, EventTable events, IJarReader reader, string file)
{
    /// <summary>A thousand times the longest event: a label that says everything.</summary>
    private const int LongestLine = 1024 * 1024;

    /// <summary>Numbers beyond it come of no shop; each jar has one, and a list of what is left out must end.</summary>
    private const int HighestNumber = 10_000_000;

    /// <summary>After so many problems nobody reads on.</summary>
    private const int MostProblems = 200;

    private readonly List<Problem> problems = [];
    private readonly SortedSet<int> jars = [];
    private readonly HashSet<Subject> supplies = [];
    private readonly SheetLives sheets = new();
    private byte[] seal = EventChain.Start;
    private long read;
    private bool parted;

    /// <summary>Takes them, and brings the lists of sheets and jars up to them.</summary>
    internal Result<ImportReport> Take(Stream stream, SheetBook sheets, JarIndex index)
    {
        var result = Take(stream);
        if (!result.Ok)
        {
            return result;
        }

        sheets.Rebuild();
        return index.Update(jars) is { Count: > 0 } problems ? Result<ImportReport>.Failed(problems) : result;
    }

    private Result<ImportReport> Take(Stream stream)
    {
        var known = events.Count;
        var lines = new TextLines(stream, LongestLine);
        if (Header(lines, known) is { } header)
        {
            TakeEvents(lines, known);
            DemandWhole(header);
            DemandLives();
        }

        return problems.Count > 0 ? Result<ImportReport>.Failed(problems) : new ImportReport(Math.Max(0, read - known), Math.Min(read, known));
    }

    private ExportHeader? Header(TextLines lines, long known)
    {
        if (!lines.Next() || lines.IsTooLong || !ExportLine.ReadHeader(Where(1), lines.Bytes).TryGet(out var header, out _))
        {
            problems.Add(ExchangeProblems.NotAnExport(Where(1)));
            return null;
        }

        if (known == 0)
        {
            database.Execute("UPDATE about SET ledger = $1", header.LedgerId);
        }
        else if (header.LedgerId != events.LedgerId)
        {
            problems.Add(ExchangeProblems.Foreign(Where(1)));
        }

        return header;
    }

    private void TakeEvents(TextLines lines, long known)
    {
        using var own = events.Links().GetEnumerator();
        while (problems.Count < MostProblems && lines.Next())
        {
            if (lines.IsTooLong)
            {
                problems.Add(ExchangeProblems.LongLine(Where(lines.Number), LongestLine));
                return;
            }

            if (lines.Bytes.IsEmpty)
            {
                continue;
            }

            read++;
            var ours = read <= known && own.MoveNext() ? own.Current.Seal : null;
            if (ExportLine.ReadEvent(Where(lines.Number), lines.Bytes).TryGet(out var link, out var faults))
            {
                TakeEvent(link, ours, Where(lines.Number));
            }
            else
            {
                problems.AddRange(faults);
                seal = [];
            }
        }
    }

    private void TakeEvent(EventLink link, byte[]? ours, string where)
    {
        var before = problems.Count;
        CheckForm(link, where, isNew: ours is null);
        seal = link.Seal;
        if (problems.Count == before && ours is not null)
        {
            Compare(link, ours, where);
        }

        if (ours is null && problems.Count == 0)
        {
            Add(link);
        }
    }

    /// <summary>After a line that could not be read the seal before is unknown, and the next line cannot be held against it.</summary>
    private void CheckForm(EventLink link, string where, bool isNew)
    {
        if (link.Row.Sequence != read)
        {
            problems.Add(ExchangeProblems.OutOfOrder(where, read, link.Row.Sequence));
            read = link.Row.Sequence;
        }
        else if (seal.Length > 0 && !EventChain.Next(seal, link.Row).AsSpan().SequenceEqual(link.Seal))
        {
            problems.Add(ExchangeProblems.Tampered(where));
        }

        Problem[] ofForm = [.. Refusals(link.Row)];
        problems.AddRange((isNew ? [.. reader.Refusals(link.Row), .. ofForm] : reader.Faults(link.Row)).Select(fault => fault with { Where = where }));
    }

    private IEnumerable<Problem> Refusals(EventRow row)
    {
        if (row.Of.Number > HighestNumber)
        {
            yield return ExchangeProblems.NotANumber("", row.Of, HighestNumber);
        }

        if (row.Revision > row.Sequence)
        {
            yield return ExchangeProblems.NotARevision("", row.Revision, row.Sequence);
        }

        if (row.Of.Kind == SubjectKind.Sheet && sheets.Refusal(row) is { } refusal)
        {
            yield return refusal;
        }
    }

    private void Compare(EventLink link, byte[] ours, string where)
    {
        if (!parted && !ours.AsSpan().SequenceEqual(link.Seal))
        {
            parted = true;
            problems.Add(ExchangeProblems.Parted(where));
        }
    }

    private void Add(EventLink link)
    {
        events.Add(link);
        if (link.Row.Of.Kind == SubjectKind.Jar)
        {
            jars.Add(link.Row.Of.Number);
        }
        else if (link.Row.Of.Kind is SubjectKind.Bag or SubjectKind.Bottle)
        {
            supplies.Add(link.Row.Of);
        }
    }

    /// <summary>The jars are folded when their list is made; bags and bottles have none.</summary>
    private void DemandLives()
    {
        if (problems.Count == 0)
        {
            problems.AddRange(supplies.SelectMany(of => reader.LifeFaults(events.Of(of))).Select(fault => fault with { Where = file }));
        }
    }

    private void DemandWhole(ExportHeader header)
    {
        if (problems.Count == 0 && (read != header.Events || Convert.ToHexStringLower(seal) != header.Seal) && (read > 0 || header.Events > 0))
        {
            problems.Add(ExchangeProblems.CutShort(file, header.Events, read));
        }
    }

    private string Where(int line) => string.Create(CultureInfo.InvariantCulture, $"{file} line {line}");
}

/// <summary>What an import did.</summary>
/// <param name="Added">Events that were new.</param>
/// <param name="Known">Events that the ledger had already, the same to the last sign.</param>
public sealed record ImportReport(long Added, long Known);
