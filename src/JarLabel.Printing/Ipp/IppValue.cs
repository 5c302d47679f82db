namespace JarLabel.Printing.Ipp;

/// <summary>One value: its syntax and its bytes, or the members of a collection.</summary>
public sealed class IppValue
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>A value of a syntax from its bytes.</summary>
    public IppValue(IppTag tag, byte[] bytes)
    {
        Tag = tag;
        Bytes = bytes;
    }

    private IppValue(IReadOnlyList<IppField> members)
    {
        Tag = IppTag.BeginCollection;
        Bytes = [];
        Members = new IppGroup(IppTag.BeginCollection, members);
    }

    /// <summary>Its syntax.</summary>
    public IppTag Tag { get; }

    /// <summary>A collection's members; null for every other value.</summary>
    public IppGroup? Members { get; }

    internal byte[] Bytes { get; }

    /// <summary>The number, or null when it is none.</summary>
    public int? Number => Tag is IppTag.Whole or IppTag.Enum && Bytes.Length == 4 ? BinaryPrimitives.ReadInt32BigEndian(Bytes) : null;

    /// <summary>Yes or no, or null when it is neither.</summary>
    public bool? Flag => Tag == IppTag.Boolean && Bytes.Length == 1 ? Bytes[0] != 0 : null;

    /// <summary>Lowest and highest; a plain number is both. Null when it is no number.</summary>
    public (int Low, int High)? Range => Tag == IppTag.Range && Bytes.Length == 8
        ? (BinaryPrimitives.ReadInt32BigEndian(Bytes), BinaryPrimitives.ReadInt32BigEndian(Bytes.AsSpan(4)))
        : Number is { } number ? (number, number) : null;

    /// <summary>Dots per inch across and down, or null.</summary>
    public (int Across, int Down)? DotsPerInch => Tag == IppTag.Resolution && Bytes.Length == 9
        ? (Dpi(BinaryPrimitives.ReadInt32BigEndian(Bytes)), Dpi(BinaryPrimitives.ReadInt32BigEndian(Bytes.AsSpan(4))))
        : null;

    /// <summary>The words, whatever they are; null for numbers and other bytes.</summary>
    public string? Text => Tag switch
    {
        IppTag.TextWithLanguage or IppTag.NameWithLanguage => AfterLanguage(),
        >= IppTag.Text and < IppTag.MemberName => Utf8.GetString(Bytes),
        _ => null,
    };

    /// <summary>A word of a syntax.</summary>
    public static IppValue Of(IppTag tag, string text) => new(tag, Utf8.GetBytes(text));

    /// <summary>A keyword.</summary>
    public static IppValue Keyword(string word) => Of(IppTag.Keyword, word);

    /// <summary>A number.</summary>
    public static IppValue Of(int number, IppTag tag = IppTag.Whole)
    {
        var bytes = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(bytes, number);
        return new IppValue(tag, bytes);
    }

    /// <summary>Yes or no.</summary>
    public static IppValue Of(bool flag) => new(IppTag.Boolean, [flag ? (byte)1 : (byte)0]);

    /// <summary>A collection.</summary>
    public static IppValue Collection(params IReadOnlyList<IppField> members) => new(members);

    private int Dpi(int dots) => Bytes[8] == 4 ? (int)Math.Round(dots * 2.54) : dots;

    private string? AfterLanguage()
    {
        if (Bytes.Length < 4)
        {
            return null;
        }

        var language = BinaryPrimitives.ReadUInt16BigEndian(Bytes);
        return Bytes.Length < 4 + language ? null : Utf8.GetString(Bytes.AsSpan(4 + language));
    }
}
