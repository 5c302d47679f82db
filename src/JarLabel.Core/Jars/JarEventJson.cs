using System.Text.Json.Serialization.Metadata;

namespace JarLabel.Core.Jars;

/// <summary>An event as the ledger and an export keep it: one JSON object, units in the names or stated with the member, invariant.
/// <para>The two kinds that every jar begins with go through <see cref="CommonEvents"/>.</para>
/// <para>The library could tell the kinds apart by itself, but it then prepares all of them to read or write one: an eighth of the time
/// that mixing a jar takes. So what begins as <see cref="Write"/> begins it is read as its kind at once; anything else goes the long
/// way.</para></summary>
public static class JarEventJson
{
    private const string Head = "{\"event\":\"";

    /// <summary>The names of all kinds.</summary>
    internal static IReadOnlyList<string> Names { get; } =
    [
        nameof(Mixed), nameof(Blended), nameof(Decanted), nameof(Thinned), nameof(Thickened), nameof(PouredOut), nameof(Used), nameof(Tested),
        nameof(Moved), nameof(Redated), nameof(Noted), nameof(Labelled), nameof(Discarded), nameof(Undone),
    ];

    private static JsonTypeInfo? Shape(string name) => name switch
    {
        nameof(Mixed) => JarEventContext.Default.Mixed,
        nameof(Blended) => JarEventContext.Default.Blended,
        nameof(Decanted) => JarEventContext.Default.Decanted,
        nameof(Thinned) => JarEventContext.Default.Thinned,
        nameof(Thickened) => JarEventContext.Default.Thickened,
        nameof(PouredOut) => JarEventContext.Default.PouredOut,
        nameof(Used) => JarEventContext.Default.Used,
        nameof(Tested) => JarEventContext.Default.Tested,
        nameof(Moved) => JarEventContext.Default.Moved,
        nameof(Redated) => JarEventContext.Default.Redated,
        nameof(Noted) => JarEventContext.Default.Noted,
        nameof(Labelled) => JarEventContext.Default.Labelled,
        nameof(Discarded) => JarEventContext.Default.Discarded,
        nameof(Undone) => JarEventContext.Default.Undone,
        _ => null,
    };

    private static readonly EventCodec<JarEvent> Codec = new(() => JarEventContext.Default.JarEvent, JarProblems.NotAnEvent);

    /// <summary>One line of JSON.</summary>
    public static string Write(JarEvent happened) => CommonEvents.Write(happened) ?? AtLength(happened);

    private static string AtLength(JarEvent happened) => Shape(happened.Name) is { } shape
        ? $"{Head}{happened.Name}\",{JsonSerializer.Serialize(happened, shape).AsSpan(1)}"
        : Codec.Write(happened);

    /// <summary>The event, or what is wrong with the text.</summary>
    /// <param name="json">What <see cref="Write"/> made.</param>
    /// <param name="where">The place it came from, for the message.</param>
    public static Result<JarEvent> Read(string json, string where) => Codec.Read(json, where, text => Common(text) ?? AsWritten(text));

    private static JarEvent? Common(string json)
    {
        if (!json.StartsWith(Head + nameof(Mixed), StringComparison.Ordinal) && !json.StartsWith(Head + nameof(Labelled), StringComparison.Ordinal))
        {
            return null;
        }

        using var line = JsonDocument.Parse(json);
        return CommonEvents.Read(line.RootElement);
    }

    private static JarEvent? AsWritten(string json)
    {
        if (!json.StartsWith(Head, StringComparison.Ordinal) || json.IndexOf("\",", Head.Length, StringComparison.Ordinal) is not (> 0 and var end))
        {
            return null;
        }

        return Shape(json[Head.Length..end]) is { } shape ? (JarEvent?)JsonSerializer.Deserialize($"{{{json.AsSpan(end + 2)}", shape) : null;
    }
}

/// <summary>The compiled shape of the events.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    UseStringEnumConverter = true,
    Converters = [typeof(GramsConverter), typeof(MillilitersConverter), typeof(CelsiusConverter), typeof(JarNumberConverter), typeof(SupplyNumberConverter)])]
[JsonSerializable(typeof(JarEvent))]
internal sealed partial class JarEventContext : JsonSerializerContext;

/// <summary>Keeps a jar in JSON as its bare number.</summary>
internal sealed class JarNumberConverter : JsonConverter<JarNumber>
{
    /// <inheritdoc/>
    public override JarNumber Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => JarNumber.From(reader.GetInt32());

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, JarNumber value, JsonSerializerOptions options) => writer.WriteNumberValue(value.Value);
}
