using System.Globalization;
using System.Text;
using JarLabel.Core;
using JarLabel.Store.Checking;
using JarLabel.Store.Index;

namespace JarLabel.Store.Exchange;

/// <summary>Takes exported events into the ledger, inside one transaction of the ledger's: all of them, or none and every problem with
/// its line. An event the ledger has already is compared; events beyond its end are added.</summary>
internal sealed class Importer(Database database, EventTable events, IJarReader reader, string file)
{
    private readonly List<Problem> problems = [];
    private readonly SortedSet<int> jars = [];
    private byte[] seal = EventChain.Start;
    private long read;
    private bool parted;

    /// <summary>The jars that got events.</summary>
    internal IReadOnlyCollection<int> Jars => jars;

    internal Result<ImportReport> Take(Stream stream)
    {
        var known = events.Count;
        using var lines = new StreamReader(stream, new UTF8Encoding(false, throwOnInvalidBytes: false));
        if (Header(lines.ReadLine(), known) is { } header)
        {
            TakeEvents(lines, known);
            DemandWhole(header);
        }

        return problems.Count > 0 ? Result<ImportReport>.Failed(problems) : new ImportReport(Math.Max(0, read - known), Math.Min(read, known));
    }

    private ExportHeader? Header(string? line, long known)
    {
        if (line is null || !ExportLine.ReadHeader(Where(1), Encoding.UTF8.GetBytes(line)).TryGet(out var header, out _))
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

    private void TakeEvents(StreamReader lines, long known)
    {
        using var own = events.Links().GetEnumerator();
        for (var number = 2; lines.ReadLine() is { } line; number++)
        {
            if (line.Length == 0)
            {
                continue;
            }

            read++;
            var ours = read <= known && own.MoveNext() ? own.Current.Seal : null;
            if (ExportLine.ReadEvent(Where(number), Encoding.UTF8.GetBytes(line)).TryGet(out var link, out var faults))
            {
                TakeEvent(link, ours, Where(number));
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
        CheckForm(link, where);
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
    private void CheckForm(EventLink link, string where)
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

        problems.AddRange(reader.Faults(link.Row).Select(fault => fault with { Where = where }));
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
