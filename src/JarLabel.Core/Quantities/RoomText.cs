namespace JarLabel.Core.Quantities;

/// <summary>Reads the size of a room: <c>50 m3</c>, <c>1800 cu ft</c>, <c>20 x 15 x 9 ft</c>.</summary>
public static class RoomText
{
    private const double MostMilliliters = 1e12;

    /// <summary>The smallest room somebody can work in, 1 m³; what is smaller is a cabinet, or a slip.</summary>
    public static Volume Least { get; } = Volume.FromCubicMeters(1);

    /// <summary>From <see cref="Least"/> to a million cubic metres.</summary>
    public static Result<Volume> Read(string text, string where) =>
        DimensionsText.OrAmount(text, UnitKind.Room, 3, MostMilliliters, where, Least.Milliliters).Then<Volume>(size => Volume.FromMilliliters(size));
}
