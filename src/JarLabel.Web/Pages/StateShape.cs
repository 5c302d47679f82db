using JarLabel.Core.Jars;

namespace JarLabel.Web.Pages;

/// <summary>A jar's state as a shape beside its word: filled is good, half is to be tested, hollow is past, dotted is not yet dissolved.</summary>
internal static class StateShape
{
    internal static Markup Of(JarState state) => Html.Own($"""<svg viewBox="0 0 20 20" aria-hidden="true">{Inside(state)}</svg>""");

    private static string Inside(JarState state) => state switch
    {
        JarState.Dissolving => """<circle cx="10" cy="10" r="8" fill="none" stroke="currentColor" stroke-width="3" stroke-dasharray="3 3.3"/>""",
        JarState.Good => """<circle cx="10" cy="10" r="9" fill="currentColor"/>""",
        JarState.Test => """<circle cx="10" cy="10" r="8" fill="none" stroke="currentColor" stroke-width="2.5"/><path d="M10 2a8 8 0 0 1 0 16z" fill="currentColor"/>""",
        JarState.Past => """<circle cx="10" cy="10" r="8" fill="none" stroke="currentColor" stroke-width="2.5"/>""",
        _ => """<path d="M3 3l14 14M17 3L3 17" fill="none" stroke="currentColor" stroke-width="3"/>""",
    };
}
