using JarLabel.Core;
using JarLabel.Store.Files;

namespace JarLabel.Store.Exchange;

/// <summary>Writes all events as JSON Lines, each seal checked on the way out.</summary>
internal sealed class Exporter(EventTable events, string ledger)
{
    internal Result<ExportReport> Write(string target)
    {
        var place = Path.GetFullPath(target);
        if (place == ledger || Directory.Exists(place) || !Directory.Exists(Path.GetDirectoryName(place)))
        {
            return ExchangeProblems.NotAPlace(place);
        }

        var part = DurableFile.PartBeside(place);
        try
        {
            WriteAll(part);
            DurableFile.MoveInto(part, place);
            return new ExportReport(place, events.Count);
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return ExchangeProblems.NotWritten(place, fault.Message);
        }
        finally
        {
            File.Delete(part);
        }
    }

    private void WriteAll(string part)
    {
        using var file = new FileStream(part, FileMode.CreateNew, FileAccess.Write, FileShare.None, bufferSize: 0);
        using var stream = new BufferedStream(file, 1 << 16);
        ExportLine.WriteHeader(stream, new ExportHeader(events.LedgerId, events.Count, Convert.ToHexStringLower(events.Head)));
        foreach (var link in events.All())
        {
            ExportLine.WriteEvent(stream, link);
        }

        stream.Flush();
        file.Flush(flushToDisk: true);
    }
}
