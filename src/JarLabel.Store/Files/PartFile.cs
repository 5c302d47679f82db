namespace JarLabel.Store.Files;

/// <summary>A file that is being written beside its place. Its writer holds it to the end, so that what a killed one left can be told from
/// what is still being written, and is swept by the next who writes in that folder.</summary>
internal sealed class PartFile : IDisposable
{
    private const string Start = ".jarlabel-", Ending = ".part";

    /// <summary>What SQLite leaves beside a database whose writer was killed.</summary>
    private const string JournalEnd = "-journal";

    private const int MostTries = 10;

    /// <summary>Where the system cannot lock, what is older than this has no writer any more.</summary>
    private static readonly TimeSpan Forgotten = TimeSpan.FromDays(1);

    /// <summary>Begins a part; throws what the disk throws.</summary>
    /// <param name="place">The full path of what it becomes.</param>
    /// <param name="ownerOnly">True for what nobody else may read.</param>
    internal PartFile(string place, bool ownerOnly = false)
    {
        var folder = System.IO.Path.GetDirectoryName(place)!;
        (Path, Stream) = Begin(folder, ownerOnly);
        Sweep(folder);
    }

    /// <summary>The part's full path.</summary>
    internal string Path { get; }

    /// <summary>Where its bytes go.</summary>
    internal DiskFile Stream { get; }

    /// <inheritdoc/>
    public void Dispose()
    {
        DurableFile.DeleteQuietly(Path);
        Stream.Dispose();
    }

    /// <summary>A sweeper may come between the making and the locking; then another is made.</summary>
    private static (string Path, DiskFile Stream) Begin(string folder, bool ownerOnly)
    {
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.ReadWrite, Share = FileLocks.Alone, BufferSize = 0 };
        if (ownerOnly && !OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        for (var tries = 0; ; tries++)
        {
            var path = System.IO.Path.Combine(folder, $"{Start}{Guid.NewGuid():N}{Ending}");
            try
            {
                var stream = new DiskFile(path, options);
                if (File.Exists(path))
                {
                    return (path, stream);
                }

                stream.Dispose();
            }
            catch (IOException fault) when (FileLocks.IsHeld(fault) && tries < MostTries)
            {
                DurableFile.DeleteQuietly(path);
            }
        }
    }

    private void Sweep(string folder)
    {
        try
        {
            string[] left = [.. Directory.EnumerateFiles(folder, $"{Start}*{Ending}").Where(found => found != Path && IsOurs(found))];
            var locks = left.Length > 0 && LocksHold();
            Array.ForEach(left, found => Sweep(found, locks));
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            // It is swept another time.
        }
    }

    private static bool IsOurs(string found) =>
        Guid.TryParseExact(System.IO.Path.GetFileName(found)[Start.Length..^Ending.Length], "N", out _) && FileLook.At(found)?.Kind == FileKind.File;

    private static void Sweep(string found, bool locks)
    {
        using var held = FileLocks.TryHold(found);
        if (held is not null && (locks || TimeProvider.System.GetUtcNow().UtcDateTime - File.GetLastWriteTimeUtc(found) > Forgotten))
        {
            DurableFile.DeleteQuietly(found);
            DurableFile.DeleteQuietly(found + JournalEnd);
        }
    }

    /// <summary>False on a disk that lets everybody hold a file at once.</summary>
    private bool LocksHold()
    {
        using var second = FileLocks.TryHold(Path);
        return second is null;
    }
}
