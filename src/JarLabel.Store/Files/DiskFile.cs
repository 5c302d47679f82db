namespace JarLabel.Store.Files;

/// <summary>A file on a disk to write. A limit that the system sets to the size of files comes out of it as what a disk refuses, and not as
/// the fault of ours for which the library takes it.</summary>
internal sealed class DiskFile(string path, FileStreamOptions options) : Stream
{
    private readonly FileStream file = new(path, options);

    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => file.Length;

    public override long Position
    {
        get => file.Position;
        set => throw new NotSupportedException();
    }

    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    public override void Write(ReadOnlySpan<byte> buffer)
    {
        try
        {
            file.Write(buffer);
        }
        catch (ArgumentOutOfRangeException fault)
        {
            throw TooLarge(fault);
        }
    }

    public override void Flush() => file.Flush();

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    /// <summary>Waits until the disk has all of it.</summary>
    internal void FlushToDisk() => file.Flush(flushToDisk: true);

    /// <summary>What the library says wrongly when a file would grow beyond its limit.</summary>
    internal static IOException TooLarge(ArgumentOutOfRangeException fault) => new(FileProblems.TooLarge, fault);

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            file.Dispose();
        }

        base.Dispose(disposing);
    }
}
