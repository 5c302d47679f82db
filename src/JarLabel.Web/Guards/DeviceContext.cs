using System.Text.Json.Serialization;

namespace JarLabel.Web.Guards;

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true, RespectNullableAnnotations = true, RespectRequiredConstructorParameters = true)]
[JsonSerializable(typeof(Device[]))]
internal sealed partial class DeviceContext : JsonSerializerContext;
