using UnitsNet;

namespace JarLabel.Core.Quantities;

/// <summary>Reads a volume: <c>1 pt</c>, <c>1 1/2 qt</c>, <c>½ gal</c>, <c>473 mL</c>, <c>0,5 L</c>, <c>16 fl oz</c>, <c>1 imp pt</c>.</summary>
public static class VolumeText
{
    private const double MostMilliliters = 1_000_000;

    /// <summary>More than nothing, at most 1000 L; otherwise a problem that says what was read and what is allowed.</summary>
    public static Result<Volume> Read(string text, string where) =>
        AmountText.Read(text, UnitKind.Volume, MostMilliliters, where).Then<Volume>(size => Volume.FromMilliliters(size));
}
