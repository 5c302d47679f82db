using JarLabel.Core.Jars;

namespace JarLabel.Core.Labels;

/// <summary>One event in words, for a card or a screen.</summary>
public static class HistoryWords
{
    /// <summary>What happened; null for what a card need not tell.</summary>
    public static string? Of(JarEvent happened) => happened switch
    {
        Mixed { Contents: { Cut: { } cut } contents } => $"mixed {BenchAmount.Metric(contents.Liquid)} of {CutWords.Of(cut)}",
        _ => null,
    };
}
