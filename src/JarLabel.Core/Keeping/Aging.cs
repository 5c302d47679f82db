namespace JarLabel.Core.Keeping;

/// <summary>How many times faster dissolved shellac ages when it is 10 °C warmer (Q10), as far as that is known.</summary>
/// <remarks>No rate constant of shellac in alcohol was found. What spoils it is taken to be its acids and the alcohol becoming esters; at 50 to 80 kJ/mol,
/// as such reactions have, the Arrhenius equation gives a Q10 of 2.0 to 3.0 at a bench's warmth. How far it may lie beside that is a judgement.</remarks>
public static class Aging
{
    /// <summary>The rule of thumb of chemistry. No date is later than it gives, and flakes are taken to dissolve by it.</summary>
    public const double Convention = 2;

    /// <summary>In nine cases of ten Q10 is thought to lie between this</summary>
    public const double Low = 1.7;

    /// <summary>and this. A judgement.</summary>
    public const double High = 3.1;

    private const double NinetyPercent = 1.6448536269514722;
    private const int PacesEachWay = 6;

    /// <summary>The middle of what is thought possible, 2.30.</summary>
    public static double Middle { get; } = Math.Sqrt(Low * High);

    /// <summary>The standard deviation of its logarithm, which is normal.</summary>
    public static double Deviation { get; } = Math.Log(High / Low) / (2 * NinetyPercent);

    /// <summary>The paces that are thought possible, 1.52 to 3.47, each with its weight before any test. The convention is one of them.</summary>
    public static IReadOnlyList<AgingPace> Thought { get; } = [.. Enumerable.Range(-PacesEachWay, (2 * PacesEachWay) + 1).Select(Pace)];

    /// <summary>Which of <see cref="Thought"/> the middle is.</summary>
    public const int MiddleOfThought = PacesEachWay;

    /// <summary>Which of <see cref="Thought"/> the convention is.</summary>
    public const int ConventionOfThought = PacesEachWay - StepsToConvention;

    private const int StepsToConvention = 2;

    /// <summary>From one pace to the next, in logarithms.</summary>
    internal static double Step => Math.Log(Middle / Convention) / StepsToConvention;

    private static AgingPace Pace(int step)
    {
        var deviations = step * Step / Deviation;
        return new(step == -StepsToConvention ? Convention : Middle * Math.Exp(step * Step), Math.Exp(-deviations * deviations / 2));
    }
}
