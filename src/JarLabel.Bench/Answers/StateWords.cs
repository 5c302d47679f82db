using JarLabel.Core.Jars;

namespace JarLabel.Bench.Answers;

/// <summary>A jar's state as one word.</summary>
internal static class StateWords
{
    internal static string Of(JarState state) => state switch
    {
        JarState.Dissolving => "dissolving",
        JarState.Good => "good",
        JarState.Test => "test",
        JarState.Past => "past",
        _ => "discarded",
    };

    /// <summary>The style that goes with the word; the word alone says it too.</summary>
    internal static LineStyle Style(JarState state) => state switch
    {
        JarState.Test => LineStyle.Soon,
        JarState.Past or JarState.Discarded => LineStyle.Over,
        _ => LineStyle.Row,
    };
}
