namespace JarLabel.Core.Keeping;

/// <summary>How lifetimes of one kind scatter: the share that is still good at an age <c>t</c> is <c>exp(-(t / scale)^shape)</c>.</summary>
/// <param name="Shape">Above 0; the larger, the closer together the lives end.</param>
/// <param name="Scale">The age at which 36.8 % are still good; any unit of time.</param>
public readonly record struct Weibull(double Shape, double Scale)
{
    private const double MostHazard = 1e300, Tiny = 1e-5;

    /// <summary>The one of a shape with a given share still good at a given age.</summary>
    /// <param name="shape">Above 0.</param>
    /// <param name="age">Above 0.</param>
    /// <param name="stillGood">Between 0 and 1.</param>
    public static Weibull Through(double shape, double age, double stillGood) => new(shape, age / Math.Pow(-Math.Log(stillGood), 1 / shape));

    /// <summary>The share still good at an age.</summary>
    public double StillGood(double age) => Math.Exp(-Hazard(age));

    /// <summary>The age at which a share is still good.</summary>
    public double AgeWhen(double stillGood) => Scale * Math.Pow(-Math.Log(stillGood), 1 / Shape);

    /// <summary>The logarithm of how likely an observed life is.</summary>
    public double LogLikelihood(LifeObservation life)
    {
        var after = Hazard(life.After);
        return life.Until switch
        {
            null => -after,
            { } until when until > life.After => -after + LogOfOneLessExp(Hazard(until) - after),
            _ => Math.Log(Shape / Scale) + ((Shape - 1) * Math.Log(life.After / Scale)) - after,
        };
    }

    /// <summary>The hazard gathered up to an age, held where a double still can be reckoned with.</summary>
    private double Hazard(double age) => age <= 0 ? 0 : Math.Min(MostHazard, Math.Pow(age / Scale, Shape));

    /// <summary>ln(1 - e^-x) without loss of figures, held above minus infinity.</summary>
    private static double LogOfOneLessExp(double x) => Math.Log(Math.Max(double.Epsilon, x < Tiny ? x : 1 - Math.Exp(-x)));
}
