namespace JarLabel.Store.Checking;

/// <summary>Passes on what is written and hashes it on the way.</summary>
internal sealed class HashedStream(Stream target) : Stream
{
    private readonly Sha256 hash = new();

    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override void Flush() => target.Flush();

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    public override void Write(ReadOnlySpan<byte> buffer)
    {
        target.Write(buffer);
        hash.Append(buffer);
    }

    /// <summary>The digest of all that went through; nothing may follow.</summary>
    internal byte[] Digest() => hash.Finish();
}
