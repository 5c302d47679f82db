namespace JarLabel.Printing.Finding;

/// <summary>Writes a question and reads answers of DNS (RFC 1035 section 4). Anybody on the network may answer anything: what is damaged is
/// dropped, and nothing is followed in a circle.</summary>
public sealed class DnsMessage
{
    private const int LongestName = 255;
    private readonly byte[] bytes;
    private int at;

    private DnsMessage(byte[] bytes) => this.bytes = bytes;

    /// <summary>Asks for the pointers of names, and that the answer come to the asker alone.</summary>
    public static byte[] Question(IReadOnlyList<string> names)
    {
        List<byte> message = [0, 0, 0, 0, 0, (byte)names.Count, 0, 0, 0, 0, 0, 0];
        foreach (var name in names)
        {
            foreach (var label in name.Split('.'))
            {
                message.Add((byte)label.Length);
                message.AddRange(Encoding.UTF8.GetBytes(label));
            }

            message.AddRange([0, 0, (byte)DnsKind.PtrRecord, 0x80, 1]);
        }

        return [.. message];
    }

    /// <summary>The records of an answer that say where a printer is; those before the damage where there is any.</summary>
    public static IReadOnlyList<DnsRecord> Read(byte[] bytes)
    {
        var records = new List<DnsRecord>();
        try
        {
            new DnsMessage(bytes).ReadInto(records);
        }
        catch (FormatException)
        {
            // What was read so far is good.
        }

        return records;
    }

    private void ReadInto(List<DnsRecord> records)
    {
        Skip(4);
        var (questions, answers) = (Short(), Short() + Short() + Short());
        for (; questions > 0; questions--)
        {
            Name();
            Skip(4);
        }

        for (; answers > 0; answers--)
        {
            var (name, kind) = (Name(), Short());
            Skip(6);
            var end = Short() + at;
            if (end > bytes.Length)
            {
                throw new FormatException();
            }

            if (Enum.IsDefined((DnsKind)kind))
            {
                records.Add(Content(new DnsRecord(name, (DnsKind)kind), end));
            }

            at = end;
        }
    }

    private DnsRecord Content(DnsRecord record, int end)
    {
        switch (record.Kind)
        {
            case DnsKind.Address when end - at == 4:
                return record with { Address = new IPAddress(bytes.AsSpan(at, 4)) };
            case DnsKind.PtrRecord:
                return record with { Target = Name() };
            case DnsKind.SrvRecord:
                Skip(4);
                return record with { Port = Short(), Target = Name() };
            case DnsKind.TxtRecord:
                return record with { Words = [.. Words(end)] };
            default:
                return record;
        }
    }

    private List<string> Words(int end)
    {
        var words = new List<string>();
        while (at < end)
        {
            var length = bytes[at++];
            if (at + length > end)
            {
                throw new FormatException();
            }

            words.Add(Encoding.UTF8.GetString(bytes, at, length));
            at += length;
        }

        return words;
    }

    /// <summary>A name, some of which may stand earlier in the message; a pointer leads backwards only, so there is no circle.</summary>
    private string Name()
    {
        var name = new StringBuilder();
        var (from, after, floor) = (at, -1, at);
        while (true)
        {
            var length = Byte(from);
            if (length == 0)
            {
                at = after < 0 ? from + 1 : after;
                return name.ToString();
            }

            if (length >= 0xC0)
            {
                after = after < 0 ? from + 2 : after;
                from = ((length & 0x3F) << 8) | Byte(from + 1);
                floor = from < floor ? from : throw new FormatException();
                continue;
            }

            if (length > 63 || from + 1 + length > bytes.Length || name.Length > LongestName)
            {
                throw new FormatException();
            }

            name.Append(name.Length > 0 ? "." : "").Append(Encoding.UTF8.GetString(bytes, from + 1, length));
            from += length + 1;
        }
    }

    private byte Byte(int place) => place < bytes.Length ? bytes[place] : throw new FormatException();

    private int Short()
    {
        Skip(2);
        return BinaryPrimitives.ReadUInt16BigEndian(bytes.AsSpan(at - 2));
    }

    private void Skip(int count) => at = at + count <= bytes.Length ? at + count : throw new FormatException();
}

/// <summary>The kinds of record that say where a printer is (RFC 1035 section 3.2.2; RFC 2782).</summary>
public enum DnsKind
{
    /// <summary>A host's address.</summary>
    Address = 1,

    /// <summary>The name of one printer.</summary>
    PtrRecord = 12,

    /// <summary>What a printer says of itself.</summary>
    TxtRecord = 16,

    /// <summary>A printer's host and port.</summary>
    SrvRecord = 33,
}

/// <summary>One record of an answer.</summary>
/// <param name="Name">Whose.</param>
/// <param name="Kind">What it says.</param>
public sealed record DnsRecord(string Name, DnsKind Kind)
{
    /// <summary>The name that it leads to.</summary>
    public string? Target { get; init; }

    /// <summary>The port of a service.</summary>
    public int Port { get; init; }

    /// <summary>A host's address.</summary>
    public IPAddress? Address { get; init; }

    /// <summary>Words, each <c>key=value</c>.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];
}
