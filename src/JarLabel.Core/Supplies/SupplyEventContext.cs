using System.Text.Json.Serialization;
using JarLabel.Core.Jars;
using JarLabel.Core.Quantities;

namespace JarLabel.Core.Supplies;

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
