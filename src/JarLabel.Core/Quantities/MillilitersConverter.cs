namespace JarLabel.Core.Quantities;

/// <summary>Keeps a volume in JSON as a bare number of millilitres; the member's name says the unit.</summary>
internal sealed class MillilitersConverter : JsonConverter<Volume>
{
    /// <inheritdoc/>
    public override Volume Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => Volume.FromMilliliters(reader.GetDouble());

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Volume value, JsonSerializerOptions options) => writer.WriteNumberValue(value.Milliliters);
}
