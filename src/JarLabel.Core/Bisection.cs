namespace JarLabel.Core;

/// <summary>Finds where something that only rises passes a mark, by halving.</summary>
internal static class Bisection
{
    private const int Steps = 60;

    /// <summary>The place between two bounds.</summary>
    /// <param name="low">Where it is below the mark.</param>
    /// <param name="high">Where it is not.</param>
    /// <param name="isBelow">Tells for a place between.</param>
    internal static double Find(double low, double high, Func<double, bool> isBelow)
    {
        for (var step = 0; step < Steps; step++)
        {
            var middle = (low + high) / 2;
            (low, high) = isBelow(middle) ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }
}
