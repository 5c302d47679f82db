using System.Collections.Concurrent;
using JarLabel.Store.Shops;

namespace JarLabel.Web.Serving;

/// <summary>Keeps pages as long as nothing they were made from has changed: the ledger, the settings, the catalog, the minute.</summary>
internal sealed class PageCache(ShopFolder folder, Func<DateTime> now)
{
    private const int MostPages = 512;

    /// <summary>A file that was written this shortly ago may be written again without looking any different.</summary>
    private static readonly TimeSpan Settled = TimeSpan.FromMilliseconds(250);

    private readonly ConcurrentDictionary<string, (Stamp Stamp, Reply Reply)> pages = new(StringComparer.Ordinal);

    internal Reply Get(string path, Func<Reply> make)
    {
        var stamp = Now();
        if (pages.TryGetValue(path, out var kept) && kept.Stamp == stamp && stamp.IsSettled)
        {
            return kept.Reply;
        }

        var reply = make();
        if (reply.Status == 200 && stamp.IsSettled && stamp == Now())
        {
            if (pages.Count >= MostPages)
            {
                pages.Clear();
            }

            pages[path] = (stamp, reply);
        }

        return reply;
    }

    private Stamp Now()
    {
        var catalog = new DirectoryInfo(folder.Catalog);
        FileInfo[] files = [new(folder.Ledger), new(folder.Ledger + "-wal"), new(folder.Settings), .. catalog.Exists ? catalog.GetFiles() : []];
        var (written, mix) = (default(DateTime), 17L);
        foreach (var file in files.Where(f => f.Exists))
        {
            written = file.LastWriteTimeUtc > written ? file.LastWriteTimeUtc : written;
            mix = HashCode.Combine(mix, file.Name, file.LastWriteTimeUtc, file.Length) + (mix * 31);
        }

        return new Stamp(now().Ticks / TimeSpan.TicksPerMinute, mix, written, TimeProvider.System.GetUtcNow().UtcDateTime - written > Settled);
    }

    /// <param name="Minute">The minute: a jar's state changes with time alone.</param>
    /// <param name="Files">Name, moment and length of every file.</param>
    /// <param name="Written">When the latest of them was written.</param>
    /// <param name="IsSettled">False while a file may change again without looking any different.</param>
    private readonly record struct Stamp(long Minute, long Files, DateTime Written, bool IsSettled);
}
