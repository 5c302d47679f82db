using System.Buffers;

namespace JarLabel.Printing.Ipp;

/// <summary>Writes a message as bytes (RFC 8010 section 3.1).</summary>
public sealed class IppWriter
{
    private readonly ArrayBufferWriter<byte> target = new();

    private IppWriter()
    {
    }

    /// <summary>The message's bytes; a document may follow them.</summary>
    /// <param name="message">The message.</param>
    /// <param name="minor">The version: 1 for 1.1, which every printer must answer.</param>
    public static byte[] Bytes(IppMessage message, byte minor = 1)
    {
        var writer = new IppWriter();
        writer.target.Write<byte>([1, minor]);
        writer.Short(message.Code);
        writer.Long(message.RequestId);
        foreach (var group in message.Groups)
        {
            writer.Tag(group.Tag);
            writer.Attributes(group.Attributes);
        }

        writer.Tag(IppTag.End);
        return writer.target.WrittenSpan.ToArray();
    }

    private void Attributes(IReadOnlyList<IppField> attributes)
    {
        foreach (var attribute in attributes)
        {
            foreach (var (place, value) in attribute.Values.Index())
            {
                Value(place == 0 ? attribute.Name : "", value);
            }
        }
    }

    private void Value(string name, IppValue value)
    {
        Tag(value.Tag);
        Sized(Encoding.UTF8.GetBytes(name));
        Sized(value.Bytes);
        if (value.Members is { } members)
        {
            Collection(members);
        }
    }

    private void Collection(IppGroup members)
    {
        foreach (var member in members.Attributes)
        {
            Value("", IppValue.Of(IppTag.MemberName, member.Name));
            foreach (var value in member.Values)
            {
                Value("", value);
            }
        }

        Value("", new IppValue(IppTag.EndCollection, []));
    }

    private void Tag(IppTag tag) => target.Write<byte>([(byte)tag]);

    private void Sized(byte[] bytes)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(bytes.Length, short.MaxValue);
        Short((ushort)bytes.Length);
        target.Write(bytes);
    }

    private void Short(ushort value)
    {
        Span<byte> bytes = stackalloc byte[2];
        BinaryPrimitives.WriteUInt16BigEndian(bytes, value);
        target.Write(bytes);
    }

    private void Long(int value)
    {
        Span<byte> bytes = stackalloc byte[4];
        BinaryPrimitives.WriteInt32BigEndian(bytes, value);
        target.Write(bytes);
    }
}
