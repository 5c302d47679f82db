namespace JarLabel.Core.Hazards;

/// <summary>At what temperature the vapour over a mixture catches fire.</summary>
/// <param name="Celsius">Closed cup, °C.</param>
/// <param name="Estimated">False where it is the published flash point of the one liquid that burns.</param>
/// <param name="Basis">How it was found, as part of a sentence.</param>
internal sealed record FlashPoint(double Celsius, bool Estimated, string Basis)
{
    /// <summary>Percent by volume of ethanol in water, and closed-cup flash point, °C. A table that handbooks copy; its first print was not
    /// seen, so it only chooses between categories 2 and 3. The last point is the pure alcohol of the NIOSH Pocket Guide.</summary>
    private static readonly (double Percent, double Celsius)[] WateredEthanol =
        [(10, 49), (20, 36), (30, 29), (40, 26), (50, 24), (60, 22), (70, 21), (80, 20), (90, 17), (96, 17), (100, 13)];

    /// <summary>The flash point; null when nothing in it is known to burn. Dissolved resin never raises it, and water only where ethanol
    /// is all that burns, because only there are figures published.</summary>
    internal static FlashPoint? Of(Composition mixture)
    {
        var burning = mixture.Ingredients.Where(i => i.Substance.Flash is not null).ToArray();
        var water = mixture.PercentOf(Substance.WaterId);
        return burning switch
        {
            [] => null,
            [{ Substance.Id: Substance.EthanolId } ethanol] when water > 0 => OfWateredEthanol(ethanol.Percent, water),
            [var only] => new(Flash(only), false, $"{only.Substance.Name} flashes at {ReasonFormat.Celsius(Flash(only))}"),
            _ => OfMixed(burning),
        };
    }

    private static FlashPoint OfWateredEthanol(decimal ethanol, decimal water)
    {
        var strength = EthanolWater.PercentByVolume((double)(ethanol / (ethanol + water)));
        var celsius = Interpolate(strength);
        return new(celsius, true, $"ethanol of {ReasonFormat.Exact(Math.Round((decimal)strength, 1))} % by volume in water flashes near {ReasonFormat.Celsius(celsius)}");
    }

    private static double Interpolate(double percent)
    {
        if (percent <= WateredEthanol[0].Percent)
        {
            return WateredEthanol[0].Celsius;
        }

        var after = Array.FindIndex(WateredEthanol, point => point.Percent >= percent);
        var (low, high) = (WateredEthanol[after - 1], WateredEthanol[after]);
        return low.Celsius + ((high.Celsius - low.Celsius) * (percent - low.Percent) / (high.Percent - low.Percent));
    }

    /// <summary>The temperature at which the vapours together reach their lower limit: each liquid's vapour by Raoult's law against its
    /// vapour at its own flash point, summed by Le Chatelier's rule. Water and resin are left out, which is the careful side.</summary>
    private static FlashPoint OfMixed(IReadOnlyList<Ingredient> burning)
    {
        var celsius = Bisection.Find(burning.Min(Flash), burning.Max(Flash), celsius => Richness(burning, celsius) < 1);
        return new(celsius, true, $"{ReasonFormat.Shares(burning)} together flash near {ReasonFormat.Celsius(celsius)}");
    }

    private static double Richness(IReadOnlyList<Ingredient> burning, double celsius)
    {
        var moles = burning.Sum(Moles);
        return burning.Sum(i => Moles(i) / moles * Math.Exp(Steepness(i.Substance) * (VaporSlope.Inverse(Flash(i)) - VaporSlope.Inverse(celsius))));
    }

    private static double Moles(Ingredient i) => (double)(i.Percent / (i.Substance.MolarMass?.Value ?? 50));

    private static double Steepness(Substance substance) => substance is { VaporPressure: { } at20, Boils: { } boils }
        ? VaporSlope.Kelvins(at20, boils)
        : 5000;

    private static double Flash(Ingredient ingredient) => (double)ingredient.Substance.Flash!.Value;
}
