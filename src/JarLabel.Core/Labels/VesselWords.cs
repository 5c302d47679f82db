namespace JarLabel.Core.Labels;

/// <summary>What the liquid of a step is mixed in: of a size that holds it with head space, labelled, and nothing that anybody could drink from.</summary>
public static class VesselWords
{
    /// <summary><c>a clean mixing jar that holds 250 mL (8.5 fl oz) or more</c>; more than a US quart is shared among jars, as no glass of alcohol should be larger.</summary>
    /// <param name="liquid">What goes into it.</param>
    /// <param name="metric">Metric amounts first.</param>
    public static string For(Volume liquid, bool metric)
    {
        var wanted = liquid / RecipeSolver.FullestFraction;
        var jars = (int)Math.Ceiling(wanted / Largest);
        return jars > 1
            ? string.Create(CultureInfo.InvariantCulture, $"{jars} clean mixing jars of {BenchAmount.Both(Largest, metric)} each")
            : $"a clean mixing jar that holds {BenchAmount.Both(Volume.FromMilliliters(Math.Ceiling(wanted.Milliliters / 10) * 10), metric)} or more";
    }

    /// <summary>What goes for all of them.</summary>
    public const string Care = "labelled; never a drinking glass or cup";

    private static Volume Largest => Volume.FromUsQuarts(1);
}
