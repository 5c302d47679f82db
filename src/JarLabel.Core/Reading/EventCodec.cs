using System.Text.Json.Serialization.Metadata;

namespace JarLabel.Core.Reading;

/// <summary>How one family of events is kept: one JSON object on one line, units in the names, invariant.</summary>
/// <param name="shape">The compiled shape of the family; asked for only when it is needed, because it takes time to get ready.</param>
/// <param name="amiss">What to say of a text that is no such event: what was read, why, and where.</param>
internal sealed class EventCodec<T>(Func<JsonTypeInfo<T>> shape, Func<string, string, string, Problem> amiss)
    where T : class
{
    /// <summary>One line of JSON.</summary>
    internal string Write(T happened) => JsonSerializer.Serialize(happened, shape());

    /// <summary>The event, or what is wrong with the text.</summary>
    /// <param name="json">What <see cref="Write"/> made.</param>
    /// <param name="where">The place it came from, for the message.</param>
    /// <param name="sooner">A shorter way to read it; gives null where it cannot.</param>
    internal Result<T> Read(string json, string where, Func<string, T?>? sooner = null)
    {
        try
        {
            return (sooner?.Invoke(json) ?? JsonSerializer.Deserialize(json, shape())) is { } happened ? happened : amiss(json, "null", where);
        }
        catch (Exception fault) when (fault is JsonException or NotSupportedException or ArgumentException or InvalidOperationException or FormatException)
        {
            return amiss(json, fault.Message, where);
        }
    }
}

/// <summary>One JSON object on one line, written member by member.</summary>
public static class JsonLine
{
    /// <summary>The line.</summary>
    /// <param name="write">Writes the members.</param>
    public static string Of(Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream(512);
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.GetBuffer().AsSpan(0, (int)stream.Length));
    }
}
