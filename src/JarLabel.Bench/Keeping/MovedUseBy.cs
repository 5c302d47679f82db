using JarLabel.Bench.Recording;
using JarLabel.Core;

namespace JarLabel.Bench.Keeping;

/// <summary>What to say of a jar that is looked at while its use-by has moved.</summary>
public static class MovedUseBy
{
    /// <summary>The caution, where there is one.</summary>
    public static IReadOnlyList<Problem> Cautions(JarHistory history)
    {
        ArgumentNullException.ThrowIfNull(history);
        return LearnedDates.Cautions(history.Jar, history.IsLabelled);
    }
}
