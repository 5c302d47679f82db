namespace JarLabel.Core.Air;

/// <summary>Several vapours at once.</summary>
public static class MixedVapors
{
    /// <summary>Vapours of like effect: the sum of each over its limit must not pass 1 (29 CFR 1910.1000(d)(2)).</summary>
    public static double SumOverLimits(IEnumerable<(double Ppm, double LimitPpm)> vapors) => vapors.Sum(v => v.Ppm / v.LimitPpm);

    /// <summary>The average over eight hours of changing exposure (29 CFR 1910.1000(d)(1)).</summary>
    public static double EightHourAverage(IEnumerable<(double Hours, double Ppm)> stretches) => stretches.Sum(s => s.Hours * s.Ppm) / 8;

    /// <summary>The lower explosive limit of mixed vapours, percent by volume: <c>1 / sum(yi / LELi)</c>, Le Chatelier's rule.</summary>
    /// <param name="vapors">Each vapour's fraction of all the vapour, and its own limit, percent.</param>
    public static double LowerExplosiveLimit(IEnumerable<(double Fraction, double LelPercent)> vapors) => Mixed(vapors);

    /// <summary>The upper explosive limit of mixed vapours, percent by volume, by the same rule.</summary>
    /// <param name="vapors">Each vapour's fraction of all the vapour, and its own limit, percent.</param>
    public static double UpperExplosiveLimit(IEnumerable<(double Fraction, double UelPercent)> vapors) => Mixed(vapors);

    private static double Mixed(IEnumerable<(double Fraction, double Percent)> vapors) => 1 / vapors.Sum(v => v.Fraction / v.Percent);
}
