using System.Text.Json.Serialization;
using JarLabel.Core.Quantities;
using JarLabel.Core.Supplies;

namespace JarLabel.Core.Jars;

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
