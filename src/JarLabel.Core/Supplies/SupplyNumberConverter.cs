namespace JarLabel.Core.Supplies;

/// <summary>Keeps the number of a bag or bottle in JSON as the bare number.</summary>
internal sealed class SupplyNumberConverter : JsonConverter<SupplyNumber>
{
    /// <inheritdoc/>
    public override SupplyNumber Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => SupplyNumber.From(reader.GetInt32());

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, SupplyNumber value, JsonSerializerOptions options) => writer.WriteNumberValue(value.Value);
}
