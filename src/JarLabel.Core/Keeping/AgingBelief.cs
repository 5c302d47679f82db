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

/// <summary>How many times faster jars age when they are 10 °C warmer, as far as a shop knows.</summary>
/// <param name="Q10">The middle of it.</param>
/// <param name="Low">Nine times of ten it lies between this</param>
/// <param name="High">and this.</param>
/// <param name="Set">True when the shop has settled it.</param>
public sealed record AgingEstimate(double Q10, double Low, double High, bool Set);

/// <summary>A pace of ageing that is thought possible.</summary>
/// <param name="Q10">How many times faster when it is 10 °C warmer.</param>
/// <param name="Weight">How likely it is thought beside the others.</param>
public readonly record struct AgingPace(double Q10, double Weight);
