namespace JarLabel.Core.Reading;

/// <summary>The lines of a text file, one by one as bytes, so that a file of any length takes no more memory than its longest line may. A line
/// ends with a line feed, a carriage return, or both.</summary>
/// <param name="stream">The file; it stays open.</param>
/// <param name="longest">The longest line that is read, in bytes. After a longer one there is nothing more to read.</param>
public sealed class TextLines(Stream stream, int longest)
{
    private readonly byte[] block = new byte[1 << 16];
    private byte[] line = new byte[256];
    private int length, at, filled;
    private long before;

    /// <summary>Which line it is, from 1.</summary>
    public int Number { get; private set; }

    /// <summary>Where in the file the line begins, in bytes from 0.</summary>
    public long Start { get; private set; }

    /// <summary>The line without its end; of one that is too long only what was read of it.</summary>
    public ReadOnlyMemory<byte> Bytes => line.AsMemory(0, length);

    /// <summary>True when the line is longer than a line may be.</summary>
    public bool IsTooLong => length > longest;

    /// <summary>Goes to the next line; false behind the last one.</summary>
    public bool Next()
    {
        if (IsTooLong || !Filled())
        {
            return false;
        }

        (length, Start) = (0, before + at);
        Number++;
        while (Filled() && !IsTooLong)
        {
            var rest = block.AsSpan(at, filled - at);
            var end = rest.IndexOfAny((byte)'\n', (byte)'\r');
            Add(rest[..(end < 0 ? rest.Length : end)]);
            if (end >= 0)
            {
                EndLine();
                break;
            }
        }

        return true;
    }

    private void EndLine()
    {
        var returned = block[at++] == '\r';
        if (returned && Filled() && block[at] == '\n')
        {
            at++;
        }
    }

    private bool Filled()
    {
        if (at == filled)
        {
            before += filled;
            filled = stream.Read(block);
            at = 0;
        }

        return filled > 0;
    }

    private void Add(ReadOnlySpan<byte> part)
    {
        if (length + part.Length > line.Length)
        {
            Array.Resize(ref line, Math.Max(length + part.Length, line.Length * 2));
        }

        part.CopyTo(line.AsSpan(length));
        length += part.Length;
        at += part.Length;
    }
}
