namespace JarLabel.Core.Keeping;

/// <summary>How far a shop's own drying tests move the published keeping times.</summary>
/// <param name="StillGood">The share of jars that should still dry hard on the use-by date: 0.8 to 0.99.</param>
/// <param name="Spread">How far a shop may be off the base months: in nine shops of ten they are right within this factor, 1.2 to 4.</param>
public sealed record LearningSettings(double StillGood, double Spread)
{
    /// <summary>The base months are read as the age at which so many jars still dry hard.</summary>
    public const double BaseStillGood = 0.9;

    /// <summary>How close together the jars of one class end their lives, as the shape of the Weibull distribution: the middle of what is
    /// thought possible.</summary>
    public const double Shape = 3;

    private const int ShapesEachWay = 12;
    private const double ShapeStep = 0.075, ShapeDeviation = 0.35;

    /// <summary>The shapes that are thought possible, 1.2 to 7.4, each with its weight before any test: the logarithm is normal around that of
    /// <see cref="Shape"/>. A judgement, for no published figure was found.</summary>
    public static IReadOnlyList<(double Shape, double Weight)> Shapes { get; } =
    [
        .. Enumerable.Range(-ShapesEachWay, (2 * ShapesEachWay) + 1).Select(i => ShapeStep * i)
            .Select(log => (Shape * Math.Exp(log), Math.Exp(-log * log / (2 * ShapeDeviation * ShapeDeviation)))),
    ];

    /// <summary>The least and the most of <see cref="StillGood"/>.</summary>
    public const double LeastStillGood = 0.8, MostStillGood = 0.99;

    /// <summary>The least and the most of <see cref="Spread"/>.</summary>
    public const double LeastSpread = 1.2, MostSpread = 4;

    /// <summary>What holds when nothing is set: nine of ten jars, and a factor of two, which is how far published claims lie around their
    /// middle of six months.</summary>
    public static LearningSettings Usual { get; } = new(0.9, 2);

    /// <summary>The standard deviation of the logarithm of a class's keeping time before any test.</summary>
    public double Deviation => Math.Log(Spread) / 1.6448536269514722;

    /// <summary>The logarithm of how much later <see cref="StillGood"/> hold than <see cref="BaseStillGood"/> do; exactly 0 where they are the same.</summary>
    public double Shift(double shape) => AsBase ? 0 : ShiftTo(shape, StillGood);

    /// <summary>The logarithm of how much later a share holds than <see cref="BaseStillGood"/> does; below 0 for a larger share.</summary>
    /// <param name="shape">The shape of the Weibull distribution, above 0.</param>
    /// <param name="stillGood">Between 0 and 1.</param>
    public static double ShiftTo(double shape, double stillGood) => Math.Log(Math.Log(stillGood) / Math.Log(BaseStillGood)) / shape;

    /// <summary>True when the use-by is meant for the very share that the base months are read for.</summary>
    public bool AsBase => StillGood == BaseStillGood;
}
