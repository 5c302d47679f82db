using UnitsNet;

namespace JarLabel.Core.Quantities;

/// <summary>Reads an area: <c>14 sq ft</c>, <c>1.3 m2</c>.</summary>
public static class AreaText
{
    /// <summary>More than nothing, at most ten thousand square metres.</summary>
    public static Result<Area> Read(string text, string where) =>
        AmountText.Read(text, UnitKind.Area, 1e8, where).Then<Area>(size => Area.FromSquareCentimeters(size));
}
