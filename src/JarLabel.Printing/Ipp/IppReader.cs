namespace JarLabel.Printing.Ipp;

/// <summary>Reads a message from bytes that anybody may have sent: what is not one is refused, never guessed at.</summary>
public sealed class IppReader
{
    /// <summary>Collections inside collections; printers nest two or three deep.</summary>
    private const int Deepest = 12;

    private readonly byte[] bytes;
    private int at;

    private IppReader(byte[] bytes) => this.bytes = bytes;

    /// <summary>The message, or null when the bytes are not one.</summary>
    /// <param name="bytes">The bytes.</param>
    /// <param name="end">Where the message ends and a document may begin.</param>
    public static IppMessage? Read(byte[] bytes, out int end)
    {
        var reader = new IppReader(bytes);
        try
        {
            var message = reader.Message();
            end = reader.at;
            return message;
        }
        catch (FormatException)
        {
            end = 0;
            return null;
        }
    }

    private IppMessage Message()
    {
        if (Take(2)[0] is not (1 or 2))
        {
            throw new FormatException();
        }

        var code = Short();
        var id = BinaryPrimitives.ReadInt32BigEndian(Take(4));
        var groups = new List<IppGroup>();
        for (var tag = Tag(); tag != IppTag.End; tag = Tag())
        {
            if ((byte)tag >= 0x10)
            {
                throw new FormatException();
            }

            groups.Add(new IppGroup(tag, Attributes()));
        }

        return new IppMessage(code, id, groups);
    }

    private List<IppField> Attributes()
    {
        var attributes = new List<IppField>();
        while (Peek() >= 0x10)
        {
            var tag = Tag();
            var name = Encoding.UTF8.GetString(Sized());
            var value = Value(tag, 0);
            Add(attributes, name, value);
        }

        return attributes;
    }

    /// <summary>A value without a name is another value of the attribute before it.</summary>
    private static void Add(List<IppField> attributes, string name, IppValue value)
    {
        if (name.Length > 0)
        {
            attributes.Add(new IppField(name, [value]));
            return;
        }

        if (attributes.Count == 0)
        {
            throw new FormatException();
        }

        var last = attributes[^1];
        if (last.Values is List<IppValue> values)
        {
            values.Add(value);
        }
        else
        {
            attributes[^1] = last with { Values = new List<IppValue>([.. last.Values, value]) };
        }
    }

    private IppValue Value(IppTag tag, int depth)
    {
        var content = Sized();
        return tag == IppTag.BeginCollection ? IppValue.Collection(Members(depth + 1)) : new IppValue(tag, content.ToArray());
    }

    private List<IppField> Members(int depth)
    {
        if (depth > Deepest)
        {
            throw new FormatException();
        }

        var members = new List<IppField>();
        var name = "";
        while (true)
        {
            var tag = Tag();
            if (Sized().Length > 0)
            {
                throw new FormatException();
            }

            if (tag == IppTag.EndCollection)
            {
                Sized();
                return members;
            }

            if (tag == IppTag.MemberName)
            {
                name = Encoding.UTF8.GetString(Sized());
                continue;
            }

            Add(members, name, Value(tag, depth));
            name = "";
        }
    }

    private byte Peek() => at < bytes.Length ? bytes[at] : throw new FormatException();

    private IppTag Tag() => (IppTag)Take(1)[0];

    private ushort Short() => BinaryPrimitives.ReadUInt16BigEndian(Take(2));

    private ReadOnlySpan<byte> Sized() => Take(Short());

    private ReadOnlySpan<byte> Take(int count)
    {
        if (count > bytes.Length - at)
        {
            throw new FormatException();
        }

        var taken = bytes.AsSpan(at, count);
        at += count;
        return taken;
    }
}

/// <summary>A named attribute with one value or several.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Values">Its values, at least one.</param>
public sealed record IppField(string Name, IReadOnlyList<IppValue> Values);

/// <summary>A request or an answer without its document (RFC 8010 section 3).</summary>
/// <param name="Code">What is asked, or how it went.</param>
/// <param name="RequestId">Ties the answer to the request.</param>
/// <param name="Groups">In order.</param>
public sealed record IppMessage(ushort Code, int RequestId, IReadOnlyList<IppGroup> Groups)
{
    /// <summary>True when it went well, perhaps with something left out.</summary>
    public bool Succeeded => Code <= 0x00FF;

    /// <summary>The groups of one kind.</summary>
    public IEnumerable<IppGroup> Of(IppTag tag) => Groups.Where(g => g.Tag == tag);

    /// <summary>The first group of one kind; an empty one where there is none.</summary>
    public IppGroup First(IppTag tag) => Of(tag).FirstOrDefault() ?? new IppGroup(tag, []);

    /// <summary>What the printer says about how it went, or null.</summary>
    public string? Says => First(IppTag.OperationGroup).Word("status-message");
}
