namespace JarLabel.Render.Pdf;

/// <summary>Passes a PDF on while it is being written, and changes two places in it without moving a byte: the version in the header,
/// and the viewer preferences, which then ask for no scaling (<c>/PrintScaling /None</c>, of PDF 1.6). Skia offers neither, and labels
/// that a viewer scales "to fit" miss their stock.</summary>
internal sealed class ActualSizeStream(Stream inner) : Stream
{
    private const int Capacity = 1 << 16;
    private readonly byte[] held = new byte[Capacity];
    private int count;
    private long passed;
    private bool asked;

    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => throw new NotSupportedException();

    /// <summary>How many bytes were written: Skia asks, to know where each object begins.</summary>
    public override long Position
    {
        get => passed + count;
        set => throw new NotSupportedException();
    }

    private static ReadOnlySpan<byte> Version => "%PDF-1.7"u8;

    private static ReadOnlySpan<byte> Preferences => "/ViewerPreferences <</Type /ViewerPreferences"u8;

    private static ReadOnlySpan<byte> NoScaling => "/ViewerPreferences <</PrintScaling /None     "u8;

    public override void Write(ReadOnlySpan<byte> buffer)
    {
        while (!buffer.IsEmpty)
        {
            if (count == Capacity)
                PassOn(keep: Preferences.Length - 1);
            var part = buffer[..Math.Min(buffer.Length, Capacity - count)];
            part.CopyTo(held.AsSpan(count));
            count += part.Length;
            buffer = buffer[part.Length..];
        }
    }

    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    /// <summary>Skia flushes as it pleases; the place to change may lie across two writes, so nothing is hurried.</summary>
    public override void Flush()
    {
    }

    /// <summary>Hands on the last bytes; throws when the PDF never came to the viewer preferences.</summary>
    internal void Finish()
    {
        PassOn(keep: 0);
        inner.Flush();
        if (!asked)
            throw new InvalidOperationException("The PDF has no viewer preferences to ask for actual size in.");
    }

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    private void PassOn(int keep)
    {
        if (passed == 0)
            Version.CopyTo(held);
        AskForNoScaling();
        var ready = Math.Max(0, count - keep);
        inner.Write(held, 0, ready);
        held.AsSpan(ready, count - ready).CopyTo(held);
        count -= ready;
        passed += ready;
    }

    private void AskForNoScaling()
    {
        var at = held.AsSpan(0, count).IndexOf(Preferences);
        if (at < 0)
            return;
        NoScaling.CopyTo(held.AsSpan(at));
        asked = true;
    }
}
