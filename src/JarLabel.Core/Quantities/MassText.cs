namespace JarLabel.Core.Quantities;

/// <summary>Reads a weight: <c>4 oz</c>, <c>1/4 lb</c>, <c>1 lb 4 oz</c>, <c>113 g</c>, <c>0,5 kg</c>.</summary>
public static class MassText
{
    private const double MostGrams = 1_000_000;

    /// <summary>What a bench can weigh, at most 1000 kg; otherwise a problem that says what was read and what is allowed.</summary>
    public static Result<Mass> Read(string text, string where) => ReadPart(text, where).Then<Mass>(mass =>
        mass < BenchAmount.LeastMass * (1 - 1e-9) ? QuantityProblems.TooSmallToMeasure(text, UnitKind.Mass, BenchAmount.Metric(BenchAmount.LeastMass), where) : mass);

    /// <summary>A weight in a ratio, such as a cut, which nobody weighs: more than nothing.</summary>
    internal static Result<Mass> ReadPart(string text, string where) =>
        AmountText.Read(text, UnitKind.Mass, MostGrams, where).Then<Mass>(size => Mass.FromGrams(size));
}
