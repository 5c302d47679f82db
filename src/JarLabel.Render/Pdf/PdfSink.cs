namespace JarLabel.Render.Pdf;

/// <summary>Takes the PDF that Skia writes and holds it until <see cref="PassOn"/>. Two reasons:
/// <para>Skia's writes come through native code, and a full disk thrown through that would end the process; here it is thrown between
/// pages, by our own call.</para>
/// <para>Two places of the file are changed without moving a byte: the version in the header, and the viewer preferences, which then ask
/// for no scaling (<c>/PrintScaling /None</c>, of PDF 1.6). Skia offers neither, and labels that a viewer scales "to fit" miss their
/// stock.</para></summary>
internal sealed class PdfSink : Stream
{
    // A label with its fonts fits without growing; what is not touched costs nothing.
    private readonly MemoryStream held = new(1 << 18);
    private long passed;

    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => passed + held.Length;

    /// <summary>How many bytes were written: Skia asks, to know where each object begins.</summary>
    public override long Position
    {
        get => Length;
        set => throw new NotSupportedException();
    }

    private Span<byte> Held => held.GetBuffer().AsSpan(0, (int)held.Length);

    private static ReadOnlySpan<byte> Version => "%PDF-1.7"u8;

    private static ReadOnlySpan<byte> Preferences => "/ViewerPreferences <</Type /ViewerPreferences"u8;

    private static ReadOnlySpan<byte> NoScaling => "/ViewerPreferences <</PrintScaling /None     "u8;

    public override void Write(ReadOnlySpan<byte> buffer) => held.Write(buffer);

    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    public override void Flush()
    {
    }

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    /// <summary>Hands on what is held.</summary>
    internal void PassOn(Stream target)
    {
        var bytes = Held;
        if (passed == 0)
            Version.CopyTo(bytes);
        Send(target, bytes);
    }

    /// <summary>Hands on the end of the file, which holds the viewer preferences.</summary>
    internal void PassOnEnd(Stream target)
    {
        var bytes = Held;
        var at = bytes.LastIndexOf(Preferences);
        if (at < 0)
            throw new InvalidOperationException("The PDF has no viewer preferences to ask for actual size in.");
        NoScaling.CopyTo(bytes[at..]);
        Send(target, bytes);
        target.Flush();
    }

    private void Send(Stream target, ReadOnlySpan<byte> bytes)
    {
        target.Write(bytes);
        passed += bytes.Length;
        held.SetLength(0);
    }
}
