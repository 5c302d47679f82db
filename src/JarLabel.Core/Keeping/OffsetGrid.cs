namespace JarLabel.Core.Keeping;

/// <summary>How much longer or shorter than the base months something keeps, on an even grid of the logarithm of the factor.</summary>
internal sealed class OffsetGrid
{
    private const int Points = 161;
    private const double Widths = 5;

    private readonly Dictionary<double, double[]> bells = [];

    /// <param name="deviation">The standard deviation before any test; the grid reaches five of them each way.</param>
    internal OffsetGrid(double deviation)
    {
        Step = 2 * Widths * deviation / (Points - 1);
        Offsets = [.. Enumerable.Range(0, Points).Select(i => (i - (Points / 2)) * Step)];
    }

    /// <summary>The grid's places.</summary>
    internal double[] Offsets { get; }

    /// <summary>From one place to the next.</summary>
    internal double Step { get; }

    /// <summary>Nothing said.</summary>
    internal static Belief Flat { get; } = new([.. Enumerable.Repeat(1.0, Points)], 0);

    /// <summary>A normal distribution around 0.</summary>
    internal Belief Normal(double deviation) => new([.. Offsets.Select(x => Bell(x / deviation))], 0);

    /// <summary>From logarithms of likelihoods.</summary>
    internal static Belief Likely(double[] logs)
    {
        var most = logs.Max();
        return new([.. logs.Select(l => Math.Exp(l - most))], most);
    }

    /// <summary>What a belief says of something that differs from its own by a normal scatter.</summary>
    internal Belief Across(Belief from, double deviation)
    {
        var bell = BellOf(deviation);
        var sums = new double[Points];
        for (var i = 0; i < Points; i++)
        {
            var weight = from.Weights[i];
            for (var to = 0; weight > 0 && to < Points; to++)
            {
                sums[to] += weight * bell[Math.Abs(to - i)];
            }
        }

        var scaled = Belief.Scaled(sums);
        return scaled with { Log = scaled.Log + from.Log };
    }

    private double[] BellOf(double deviation)
    {
        if (!bells.TryGetValue(deviation, out var bell))
        {
            bells[deviation] = bell = [.. Enumerable.Range(0, Points).Select(i => Bell(i * Step / deviation))];
        }

        return bell;
    }

    private static double Bell(double deviations) => Math.Exp(-deviations * deviations / 2);
}
