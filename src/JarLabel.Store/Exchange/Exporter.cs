namespace JarLabel.Store.Exchange;

/// <summary>Writes all events as JSON Lines, each seal checked on the way out.</summary>
internal sealed class Exporter(EventTable events, ShopFolder folder)
{
    /// <summary>Writes them, or only looks whether it could.</summary>
    internal Result<ExportReport> Write(string target, bool force, bool write) =>
        Look(target, force).Then(place => write ? Write(place) : new ExportReport(place.Path, events.Count));

    private Result<GuardedPlace> Look(string target, bool force)
    {
        var place = Path.GetFullPath(target);
        if (place == folder.Ledger || Directory.Exists(place) || !Directory.Exists(Path.GetDirectoryName(place)))
        {
            return ExchangeProblems.NotAPlace(place);
        }

        return new FileGuard(folder).Look(place, OwnKind.Export, force);
    }

    private Result<ExportReport> Write(GuardedPlace place)
    {
        try
        {
            return DurableFile.Write(place, WriteAll) is { } problem ? problem : new ExportReport(place.Path, events.Count);
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return ExchangeProblems.NotWritten(place.Path, DiskCause.Why(place.Path, fault));
        }
    }

    private void WriteAll(Stream file)
    {
        var stream = new BufferedStream(file, 1 << 16);
        ExportLine.WriteHeader(stream, new ExportHeader(events.LedgerId, events.Count, Convert.ToHexStringLower(events.Head)));
        foreach (var link in events.All())
        {
            ExportLine.WriteEvent(stream, link);
        }

        stream.Flush();
    }
}

/// <summary>An export that was written.</summary>
/// <param name="File">Where it is.</param>
/// <param name="Events">How many events it holds.</param>
public sealed record ExportReport(string File, long Events);
