namespace JarLabel.Store.Files;

/// <summary>Files that are whole or not there, even after a power cut: written beside their place, flushed, then moved.</summary>
public static class DurableFile
{
    private static readonly FileStreamOptions New = new() { Mode = FileMode.CreateNew, Access = FileAccess.Write, Share = FileShare.None, BufferSize = 0 };

    /// <summary>Writes a new file as its bytes come, and waits until the disk has it and its name.</summary>
    /// <returns>SHA-256 and length of what was written.</returns>
    internal static (byte[] Hash, long Length) WriteNew(string path, Action<Stream> write)
    {
        byte[] hash;
        long length;
        using (var stream = new DiskFile(path, New))
        {
            using (var hashed = new HashedStream(stream))
            {
                write(hashed);
                hash = hashed.Digest();
            }

            length = stream.Length;
            stream.FlushToDisk();
        }

        FolderSync.Flush(Path.GetDirectoryName(path)!);
        return (hash, length);
    }

    /// <summary>Writes a file in a place that the guard let through, in one step; throws what the disk throws.</summary>
    /// <param name="place">The place.</param>
    /// <param name="write">Writes its contents.</param>
    /// <returns>What came between, or null when it is written.</returns>
    public static Problem? Write(GuardedPlace place, Action<Stream> write)
    {
        using var part = new PartFile(place.Real);
        write(part.Stream);
        part.Stream.FlushToDisk();
        if (place.Receive(part.Path) is { } problem)
        {
            return problem;
        }

        KeptWork.Add($"the file \"{place.Path}\"");
        return null;
    }

    /// <summary>Replaces one of the shop's own files in one step, or writes it where there is none; throws what the disk throws.</summary>
    /// <param name="place">The full path; a link stays a link.</param>
    /// <param name="bytes">Its contents.</param>
    /// <param name="ownerOnly">True for what nobody else may read.</param>
    public static void Replace(string place, ReadOnlySpan<byte> bytes, bool ownerOnly = false)
    {
        ArgumentException.ThrowIfNullOrEmpty(place);
        var real = LinkPath.Of(place);
        using var part = new PartFile(real, ownerOnly);
        part.Stream.Write(bytes);
        part.Stream.FlushToDisk();
        File.Move(part.Path, real, overwrite: true);
        FolderSync.Flush(Path.GetDirectoryName(real)!);
    }

    /// <summary>The SHA-256 of a file; empty when it cannot be read.</summary>
    internal static byte[] Hash(string path)
    {
        try
        {
            using var stream = InputFile.Open(path);
            return Sha256.Of(stream);
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return [];
        }
    }

    /// <summary>Removes a file if it is there and can be removed.</summary>
    internal static void DeleteQuietly(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            // It is swept the next time.
        }
    }

    /// <summary>A name in the same folder that nobody else uses.</summary>
    internal static string PartBeside(string place) =>
        Path.Combine(Path.GetDirectoryName(place)!, $".{Guid.NewGuid():N}.part");
}
