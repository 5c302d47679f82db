using System.Collections.Concurrent;

namespace JarLabel.Render.Pdf;

/// <summary>Makes the next pages on a second thread while this one draws. Of ten thousand labels, encoding the codes is near half of the
/// work and drawing the other half: together they take hardly longer than one. At most a handful of pages wait at any time.</summary>
internal static class ReadAhead
{
    private const int Waiting = 4;

    /// <summary>The same pages in the same order. A list is handed back as it is: its pages are already made.</summary>
    internal static IEnumerable<Page> Of(IEnumerable<Page> pages) => pages is IReadOnlyCollection<Page> ? pages : Run(pages);

    private static IEnumerable<Page> Run(IEnumerable<Page> pages)
    {
        using var ready = new BlockingCollection<Page>(Waiting);
        using var stop = new CancellationTokenSource();
        var making = Task.Run(() => Make(pages, ready, stop.Token));
        try
        {
            foreach (var page in ready.GetConsumingEnumerable())
                yield return page;
        }
        finally
        {
            // Reached early when drawing failed; otherwise the maker is done, and a fault of its own comes out here.
            stop.Cancel();
            making.GetAwaiter().GetResult();
        }
    }

    private static void Make(IEnumerable<Page> pages, BlockingCollection<Page> ready, CancellationToken stop)
    {
        try
        {
            foreach (var page in pages)
                ready.Add(page, stop);
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            // The drawing side has given up; there is no one to make pages for.
        }
        finally
        {
            ready.CompleteAdding();
        }
    }
}
