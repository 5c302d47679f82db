using UnitsNet;

namespace JarLabel.Core.Quantities;

/// <summary>Reads the size of a room: <c>50 m3</c>, <c>1800 cu ft</c>.</summary>
public static class RoomText
{
    /// <summary>More than nothing, at most a million cubic metres.</summary>
    public static Result<Volume> Read(string text, string where) =>
        AmountText.Read(text, UnitKind.Volume, 1e12, where).Then<Volume>(size => Volume.FromMilliliters(size));
}
