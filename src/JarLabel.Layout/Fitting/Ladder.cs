namespace JarLabel.Layout.Fitting;

/// <summary>Sizes from the largest to the smallest allowed, and the one in use. Fitting starts on the smallest and climbs.</summary>
internal sealed class Ladder(IReadOnlyList<double> sizes)
{
    private int at = sizes.Count - 1;

    internal double Size => sizes[at];

    internal double Smallest => sizes[^1];

    /// <summary>Takes the largest size at which everything still fits.</summary>
    internal void Climb(Func<bool> fits)
    {
        var smallest = at;
        for (at = 0; at < smallest; at++)
        {
            if (fits())
                return;
        }
    }
}
