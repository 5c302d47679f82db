using System.Text.Json;
using System.Text.Json.Serialization;

namespace JarLabel.Core.Jars;

/// <summary>Keeps a jar in JSON as its bare number.</summary>
internal sealed class JarNumberConverter : JsonConverter<JarNumber>
{
    /// <inheritdoc/>
    public override JarNumber Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => JarNumber.From(reader.GetInt32());

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, JarNumber value, JsonSerializerOptions options) => writer.WriteNumberValue(value.Value);
}
