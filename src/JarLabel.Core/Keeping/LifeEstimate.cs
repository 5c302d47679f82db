namespace JarLabel.Core.Keeping;

/// <summary>How long jars of a class keep on a shelf, at 20 °C unless another was asked for, as far as is known.</summary>
/// <param name="Class">The class.</param>
/// <param name="BaseMonths">The months from published claims, brought to the shelf.</param>
/// <param name="Months">The months after the shop's tests: as many jars as wanted still dry hard then.</param>
/// <param name="Low">Nine times of ten the true figure is between this</param>
/// <param name="High">and this, in months.</param>
/// <param name="Lives">What the class's own jars showed, ages in days as at 20 °C.</param>
/// <param name="Related">How many tested jars of other classes it leans on.</param>
public sealed record LifeEstimate(
    LifeClass Class, double BaseMonths, double Months, double Low, double High, IReadOnlyList<LifeObservation> Lives, int Related)
{
    /// <summary>How many drying tests of the class's own jars it stands on.</summary>
    public int Tests { get; init; }

    /// <summary>How close together the lives end, as the shape of the Weibull distribution: the mean of what is thought possible now.</summary>
    public double Shape { get; init; } = LearningSettings.Shape;

    /// <summary>How the lifetimes scatter around the estimate, in months.</summary>
    /// <param name="stillGood">The share that <see cref="Months"/> is meant for.</param>
    public Weibull Curve(double stillGood) => Weibull.Through(Shape, Months, stillGood);
}
