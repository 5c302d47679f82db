namespace JarLabel.Core.Quantities;

/// <summary>Keeps a weight in JSON as a bare number of grams; the member's name says the unit.</summary>
internal sealed class GramsConverter : JsonConverter<Mass>
{
    /// <inheritdoc/>
    public override Mass Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => Mass.FromGrams(reader.GetDouble());

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Mass value, JsonSerializerOptions options) => writer.WriteNumberValue(value.Grams);
}
