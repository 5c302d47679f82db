namespace JarLabel.Core.Quantities;

/// <summary>Reads a volume: <c>1 pt</c>, <c>1 1/2 qt</c>, <c>½ gal</c>, <c>473 mL</c>, <c>0,5 L</c>, <c>16 fl oz</c>, <c>1 imp pt</c>.</summary>
public static class VolumeText
{
    private const double MostMilliliters = 1_000_000;

    /// <summary>What a bench can measure, at most 1000 L; otherwise a problem that says what was read and what is allowed.</summary>
    public static Result<Volume> Read(string text, string where) => ReadPart(text, where).Then<Volume>(volume =>
        volume < BenchAmount.LeastVolume * (1 - 1e-9) ? QuantityProblems.TooSmallToMeasure(text, UnitKind.Volume, BenchAmount.Metric(BenchAmount.LeastVolume), where) : volume);

    /// <summary>A volume in a ratio, such as a cut, which nobody measures: more than nothing.</summary>
    internal static Result<Volume> ReadPart(string text, string where) =>
        AmountText.Read(text, UnitKind.Volume, MostMilliliters, where).Then<Volume>(size => Volume.FromMilliliters(size));
}
