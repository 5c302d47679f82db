using JarLabel.Core.Jars;

namespace JarLabel.Core.Keeping;

/// <summary>When a batch is ready, when to try a drop before use, and until when it is expected to dry hard. All are estimates.</summary>
/// <param name="Ready">The flakes should be dissolved.</param>
/// <param name="TestFrom">From this day, try a drop on glass before use.</param>
/// <param name="UseBy">Expected to dry hard until this day.</param>
public sealed record KeepingDates(DateTime Ready, DateOnly TestFrom, DateOnly UseBy)
{
    /// <summary>How a jar with these dates stands at a moment.</summary>
    public JarState StateAt(DateTime moment)
    {
        var day = DateOnly.FromDateTime(moment);
        return day > UseBy ? JarState.Past
            : moment < Ready ? JarState.Dissolving
            : day >= TestFrom ? JarState.Test
            : JarState.Good;
    }
}
