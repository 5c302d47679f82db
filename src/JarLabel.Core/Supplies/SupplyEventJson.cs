namespace JarLabel.Core.Supplies;

/// <summary>An event of a bag or bottle as the ledger and an export keep it: one JSON object, units in the names, invariant.</summary>
public static class SupplyEventJson
{
    private static readonly EventCodec<SupplyEvent> Codec = new(() => SupplyEventContext.Default.SupplyEvent, SupplyProblems.NotAnEvent);

    /// <summary>One line of JSON.</summary>
    public static string Write(SupplyEvent happened) => Codec.Write(happened);

    /// <summary>The event, or what is wrong with the text.</summary>
    /// <param name="json">What <see cref="Write"/> made.</param>
    /// <param name="where">The place it came from, for the message.</param>
    public static Result<SupplyEvent> Read(string json, string where) => Codec.Read(json, where);
}

/// <summary>The compiled shape of the events.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    UseStringEnumConverter = true,
    Converters = [typeof(GramsConverter), typeof(MillilitersConverter), typeof(JarNumberConverter)])]
[JsonSerializable(typeof(SupplyEvent))]
internal sealed partial class SupplyEventContext : JsonSerializerContext;
