namespace JarLabel.Core.Quantities;

/// <summary>Keeps a temperature in JSON as a bare number of degrees Celsius; the member's name says the unit.</summary>
internal sealed class CelsiusConverter : JsonConverter<Temperature>
{
    /// <inheritdoc/>
    public override Temperature Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => Temperature.FromDegreesCelsius(reader.GetDouble());

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Temperature value, JsonSerializerOptions options) => writer.WriteNumberValue(value.DegreesCelsius);
}
