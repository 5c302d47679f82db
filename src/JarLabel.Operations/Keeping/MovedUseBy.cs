namespace JarLabel.Operations.Keeping;

/// <summary>What to say of a jar that is looked at while its use-by has moved.</summary>
public static class MovedUseBy
{
    /// <summary>The caution, where there is one.</summary>
    public static IReadOnlyList<Problem> Cautions(JarHistory history) => LearnedDates.Cautions(history.Jar, history.IsLabelled);
}
