namespace JarLabel.Web.Pages;

/// <summary>Ways to steps that help or come next: each opens the step's form, filled in.</summary>
internal static class StepLinks
{
    /// <summary>The ways to those of some steps that have a page, each once. A step of a jar names it, except on that jar's own pages.</summary>
    /// <param name="steps">The steps.</param>
    /// <param name="own">The jar whose page it stands on; null for any other.</param>
    /// <param name="except">Addresses that stand on the page already.</param>
    internal static Markup Of(IEnumerable<Remedy> steps, JarNumber? own, params IReadOnlyCollection<string> except) =>
        Html.All(steps.Select(StepWay.To).Where(way => way.Address is not null && !except.Contains(way.Address)).DistinctBy(way => way.Address).Select(way => Html.Of($"""<a class="go" href="{way.Address!}">{Title(way, own)}</a>""")));

    /// <summary>The same as a row of buttons; nothing where there are none.</summary>
    internal static Markup Row(IEnumerable<Remedy> steps, JarNumber? own = null) => Of(steps, own) is { Text.Length: > 0 } links ? Html.Of($"""<p class="do">{links}</p>""") : default;

    /// <summary>Words that lead to a step; only the words where it has no page.</summary>
    internal static Markup Named(Remedy step, string words) => StepWay.To(step).Address is { } address ? Html.Of($"""<a href="{address}">{words}</a>""") : Html.Of($"{words}");

    private static string Title(StepWay way, JarNumber? own) => way.OfJar is { } jar && jar != own ? $"{way.Title}: jar {jar}" : way.Title;
}
