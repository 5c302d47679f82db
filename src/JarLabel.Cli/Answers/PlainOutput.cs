namespace JarLabel.Cli.Answers;

/// <summary>Standard output or errors: the console's own stream first gets ready to work a terminal, with a thread for its signals, and does
/// not tell a terminal that has vanished from a fault of ours. Not for Windows.</summary>
/// <param name="number">1 for the output, 2 for the errors.</param>
internal sealed partial class PlainOutput(int number) : Stream
{
    /// <summary>The number of standard output.</summary>
    internal const int Answers = 1;

    /// <summary>The number of standard errors.</summary>
    internal const int Errors = 2;

    private const int Interrupted = 4, Again = 11, BrokenPipe = 32;

    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    /// <summary>Writes all of it. Nobody is left to hear of a reader that has gone, nor of errors that cannot be written.</summary>
    public override void Write(ReadOnlySpan<byte> buffer)
    {
        if (StandardStreams.IsClosed(number))
        {
            if (number != Errors)
            {
                throw new OutputFault("standard output is closed");
            }

            return;
        }

        while (buffer.Length > 0)
        {
            var written = WriteTo(number, buffer, buffer.Length);
            if (written >= 0)
            {
                buffer = buffer[(int)written..];
                continue;
            }

            switch (Marshal.GetLastPInvokeError())
            {
                case Interrupted:
                    break;
                case Again:
                    Thread.Sleep(1);
                    break;
                case BrokenPipe:
                case not 0 when number == Errors:
                    return;
                default:
                    throw new OutputFault(Marshal.GetLastPInvokeErrorMessage());
            }
        }
    }

    public override void Flush()
    {
    }

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    [LibraryImport("libc", EntryPoint = "write", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial nint WriteTo(int number, ReadOnlySpan<byte> bytes, nint length);
}

/// <summary>The answer could not be written where it should go. What the command did is done all the same.</summary>
internal sealed class OutputFault(string message) : IOException(message);
