namespace JarLabel.Core.Keeping;

/// <summary>What something says, as weights on the places of an <see cref="OffsetGrid"/>.</summary>
/// <param name="Weights">The weights; the largest is 1.</param>
/// <param name="Log">The logarithm of what they were divided by for that, so that one belief can be held against another.</param>
internal readonly record struct Belief(double[] Weights, double Log)
{
    /// <summary>The logarithm of all of it together.</summary>
    internal double LogSum => Log + Math.Log(Weights.Sum());

    /// <summary>Both together.</summary>
    internal static Belief Both(Belief one, Belief other)
    {
        var product = Scaled([.. one.Weights.Zip(other.Weights, (a, b) => a * b)]);
        return product with { Log = product.Log + one.Log + other.Log };
    }

    /// <summary>Weights as they come.</summary>
    internal static Belief Scaled(double[] weights)
    {
        var most = weights.Max();
        return most > 0 ? new([.. weights.Select(w => w / most)], Math.Log(most)) : new(weights, 0);
    }
}
