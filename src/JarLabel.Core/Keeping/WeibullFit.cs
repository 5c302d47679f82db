namespace JarLabel.Core.Keeping;

/// <summary>The Weibull distribution under which observed lifetimes are likeliest, whether they ended at a known age, between two ages, or
/// not yet.</summary>
public static class WeibullFit
{
    private const double LeastLogShape = -2.5, MostLogShape = 4;
    private const double WidestLogScale = 12;
    private const int Steps = 80;
    private static readonly double Golden = (Math.Sqrt(5) - 1) / 2;

    /// <summary>The likeliest distribution; null when fewer than two lives of different length ended, because then there is none.</summary>
    public static Weibull? Of(IReadOnlyList<LifeObservation> lives)
    {
        if (lives.Where(l => l.Ended).Distinct().Count() < 2)
        {
            return null;
        }

        var shape = Math.Exp(Peak(LeastLogShape, MostLogShape, logShape => Likelihood(Best(Math.Exp(logShape), lives), lives)));
        return shape is > 0.09 and < 50 ? Best(shape, lives) : null;
    }

    /// <summary>The best scale for a shape. The likelihood has one peak along the logarithm of the scale.</summary>
    private static Weibull Best(double shape, IReadOnlyList<LifeObservation> lives)
    {
        var middle = Math.Log(lives.Max(l => l.Until ?? l.After));
        return new(shape, Math.Exp(Peak(middle - WidestLogScale, middle + WidestLogScale, logScale => Likelihood(new(shape, Math.Exp(logScale)), lives))));
    }

    private static double Likelihood(Weibull weibull, IReadOnlyList<LifeObservation> lives) => lives.Sum(weibull.LogLikelihood);

    /// <summary>The place of a single peak, by golden section.</summary>
    private static double Peak(double low, double high, Func<double, double> height)
    {
        var (left, right) = (high - (Golden * (high - low)), low + (Golden * (high - low)));
        var (atLeft, atRight) = (height(left), height(right));
        for (var i = 0; i < Steps; i++)
        {
            if (atLeft >= atRight)
            {
                (high, right, atRight) = (right, left, atLeft);
                left = high - (Golden * (high - low));
                atLeft = height(left);
            }
            else
            {
                (low, left, atLeft) = (left, right, atRight);
                right = low + (Golden * (high - low));
                atRight = height(right);
            }
        }

        return (low + high) / 2;
    }
}
