namespace JarLabel.Core.Keeping;

/// <summary>Reads weights on paces of ageing as the estimate they are.</summary>
internal static class AgingBelief
{
    private const double BandLow = 0.05, Middle = 0.5, BandHigh = 0.95;

    /// <summary>The middle and the band of 90 %.</summary>
    /// <param name="paces">The paces, <see cref="Aging.Step"/> apart.</param>
    /// <param name="weights">What each counts now.</param>
    internal static AgingEstimate Of(IReadOnlyList<AgingPace> paces, IReadOnlyList<double> weights) =>
        new(Quantile(paces, weights, Middle), Quantile(paces, weights, BandLow), Quantile(paces, weights, BandHigh), Set: false);

    /// <summary>Each weight is spread evenly over its cell of the logarithm.</summary>
    private static double Quantile(IReadOnlyList<AgingPace> paces, IReadOnlyList<double> weights, double share)
    {
        var left = share * weights.Sum();
        var i = 0;
        while (i < weights.Count - 1 && left > weights[i])
        {
            left -= weights[i++];
        }

        return paces[i].Q10 * Math.Exp(Aging.Step * ((weights[i] > 0 ? Math.Min(1, left / weights[i]) : 1) - 0.5));
    }
}
