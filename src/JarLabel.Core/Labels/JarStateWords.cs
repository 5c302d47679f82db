using JarLabel.Core.Jars;

namespace JarLabel.Core.Labels;

/// <summary>How a jar stands, in a word or two, as pages and drawings say it beside a shape.</summary>
public static class JarStateWords
{
    /// <summary><c>test first</c>.</summary>
    public static string Of(JarState state) => state switch
    {
        JarState.Dissolving => "still dissolving",
        JarState.Good => "good",
        JarState.Test => "test first",
        JarState.Past => "past",
        _ => "gone",
    };
}
