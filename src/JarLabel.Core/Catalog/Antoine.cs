namespace JarLabel.Core.Catalog;

/// <summary>Vapour pressure by Antoine's equation, <c>log10(p in bar) = A - B / (T in K + C)</c>.</summary>
/// <param name="A">First coefficient.</param>
/// <param name="B">Second coefficient, K.</param>
/// <param name="C">Third coefficient, K.</param>
/// <param name="ColdestKelvin">Start of the range the coefficients were fitted to.</param>
/// <param name="WarmestKelvin">End of that range.</param>
/// <param name="Source">Where the coefficients were printed.</param>
public sealed record Antoine(double A, double B, double C, double ColdestKelvin, double WarmestKelvin, string Source)
{
    /// <summary>True inside the fitted range.</summary>
    public bool Covers(Temperature temperature) => temperature.Kelvins >= ColdestKelvin && temperature.Kelvins <= WarmestKelvin;

    /// <summary>The pressure of the saturated vapour.</summary>
    public Pressure PressureAt(Temperature temperature) => Pressure.FromBars(Math.Pow(10, A - (B / (temperature.Kelvins + C))));

    internal static Antoine Read(FieldReader fields) => new(
        fields.Number("a", 0, 100),
        fields.Number("b", 0, 100_000),
        fields.Number("c", -1000, 1000),
        fields.Number("coldestKelvin", 0, 2000),
        fields.Number("warmestKelvin", 0, 2000),
        fields.Text("source"));
}
