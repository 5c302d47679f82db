namespace JarLabel.Core.Keeping;

/// <summary>Beliefs of one thing under several shapes, each with its weight.</summary>
internal sealed class OffsetMixture
{
    private readonly OffsetGrid grid;
    private readonly (double Weight, double Shift, double[] Below)[] parts;

    /// <param name="grid">Where the beliefs lie.</param>
    /// <param name="parts">What weight each has, how far the age asked for is from the one the belief is of (a logarithm), and the belief.</param>
    internal OffsetMixture(OffsetGrid grid, IEnumerable<(double Weight, double Shift, Belief Belief)> parts)
    {
        this.grid = grid;
        this.parts = [.. parts.Select(p => (p.Weight, p.Shift, Gathered(p.Belief.Weights)))];
        var all = this.parts.Sum(p => p.Weight);
        this.parts = [.. this.parts.Select(p => p with { Weight = p.Weight / all })];
    }

    /// <summary>The place below which a share lies. Each weight is spread evenly over its cell.</summary>
    internal double Quantile(double share)
    {
        var (low, high) = (grid.Offsets[0] - grid.Step + parts.Min(p => p.Shift), grid.Offsets[^1] + grid.Step + parts.Max(p => p.Shift));
        return Bisection.Find(low, high, place => parts.Sum(p => p.Weight * Below(p.Below, place - p.Shift)) < share);
    }

    private double Below(double[] gathered, double offset)
    {
        var cells = Math.Clamp(((offset - grid.Offsets[0]) / grid.Step) + 0.5, 0, gathered.Length - 1);
        var whole = Math.Min((int)cells, gathered.Length - 2);
        return gathered[whole] + ((cells - whole) * (gathered[whole + 1] - gathered[whole]));
    }

    private static double[] Gathered(double[] weights)
    {
        var sums = new double[weights.Length + 1];
        for (var i = 0; i < weights.Length; i++)
        {
            sums[i + 1] = sums[i] + weights[i];
        }

        return [.. sums.Select(s => s / sums[^1])];
    }
}
