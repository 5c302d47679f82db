using JarLabel.Store.Checking;

namespace JarLabel.Store.Files;

/// <summary>Files that are whole or not there, even after a power cut: written beside their place, flushed, then moved.</summary>
public static class DurableFile
{
    /// <summary>Writes a new file and waits until the disk has it and its name.</summary>
    internal static void WriteNew(string path, ReadOnlySpan<byte> bytes)
    {
        using (var stream = new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.None, bufferSize: 0))
        {
            stream.Write(bytes);
            stream.Flush(flushToDisk: true);
        }

        FolderSync.Flush(Path.GetDirectoryName(path)!);
    }

    /// <summary>Writes a new file as its bytes come, and waits until the disk has it and its name.</summary>
    /// <returns>SHA-256 and length of what was written.</returns>
    internal static (byte[] Hash, long Length) WriteNew(string path, Action<Stream> write)
    {
        byte[] hash;
        long length;
        using (var stream = new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.None, bufferSize: 0))
        {
            using (var hashed = new HashedStream(stream))
            {
                write(hashed);
                hash = hashed.Digest();
            }

            length = stream.Length;
            stream.Flush(flushToDisk: true);
        }

        FolderSync.Flush(Path.GetDirectoryName(path)!);
        return (hash, length);
    }

    /// <summary>Moves a finished file over its place. True also when somebody else has already moved it.</summary>
    internal static void MoveInto(string part, string place)
    {
        try
        {
            File.Move(part, place, overwrite: true);
        }
        catch (FileNotFoundException)
        {
            return;
        }

        FolderSync.Flush(Path.GetDirectoryName(place)!);
    }

    /// <summary>Replaces a file's contents in one step, or writes it where there is none; throws what the disk throws.</summary>
    /// <param name="place">The full path.</param>
    /// <param name="bytes">Its contents.</param>
    public static void Replace(string place, ReadOnlySpan<byte> bytes)
    {
        var part = PartBeside(place);
        try
        {
            WriteNew(part, bytes);
            File.Move(part, place, overwrite: true);
            FolderSync.Flush(Path.GetDirectoryName(place)!);
        }
        finally
        {
            File.Delete(part);
        }
    }

    /// <summary>The SHA-256 of a file; empty when it cannot be read.</summary>
    internal static byte[] Hash(string path)
    {
        try
        {
            using var stream = File.OpenRead(path);
            return Sha256.Of(stream);
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return [];
        }
    }

    /// <summary>A name in the same folder that nobody else uses.</summary>
    internal static string PartBeside(string place) =>
        Path.Combine(Path.GetDirectoryName(place)!, $".{Guid.NewGuid():N}.part");
}
