namespace JarLabel.Web.Pages;

/// <summary>When a jar that dissolves is to be swirled next. The script counts and keeps it; the calendar of the shelf reminds as often.</summary>
internal static class SwirlPart
{
    /// <summary>True for a jar whose flakes are still dissolving.</summary>
    internal static bool IsOf(Workbench bench, Jar jar) => jar.OnShelf && jar.StateAt(bench.Now) == JarState.Dissolving;

    internal static Markup Of(Workbench bench, JarHistory history) => Html.If(IsOf(bench, history.Jar), () => Html.Of(
        $"""
        <section class="timer" data-swirl="{history.Jar.Number}" data-every="{JarReminders.SwirlHours * 3600}" data-ago="{Math.Max(0, (int)(bench.Now - Begun(history)).TotalSeconds)}" aria-label="Swirl it" hidden>
        <p>Next swirl in <b role="timer"></b></p><button type="button">Swirled</button>
        </section>
        """));

    /// <summary>When flakes came to alcohol last.</summary>
    private static DateTime Begun(JarHistory history) => history.Life.Standing.LastOrDefault(happened => happened is Mixed or Thickened)?.At ?? history.Jar.MixedAt;
}
