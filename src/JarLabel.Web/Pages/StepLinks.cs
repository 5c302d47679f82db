namespace JarLabel.Web.Pages;

/// <summary>Ways to steps that help or come next: each opens the step's form, filled in.</summary>
internal static class StepLinks
{
    /// <summary>The ways to those of some steps that have a page, each once.</summary>
    /// <param name="steps">The steps.</param>
    /// <param name="except">Addresses that stand on the page already.</param>
    internal static Markup Of(IEnumerable<Remedy> steps, params IReadOnlyCollection<string> except) =>
        Html.All(steps.Select(One).Where(one => one.Address is not null && !except.Contains(one.Address)).DistinctBy(one => one.Address).Select(one => Html.Of($"""<a class="go" href="{one.Address!}">{one.Title}</a>""")));

    /// <summary>The same as a row of buttons; nothing where there are none.</summary>
    internal static Markup Row(IEnumerable<Remedy> steps) => Of(steps) is { Text.Length: > 0 } links ? Html.Of($"""<p class="do">{links}</p>""") : default;

    /// <summary>Words that lead to a step; only the words where it has no page.</summary>
    internal static Markup Named(Remedy step, string words) => One(step).Address is { } address ? Html.Of($"""<a href="{address}">{words}</a>""") : Html.Of($"{words}");

    private static (string? Address, string Title) One(Remedy wanted)
    {
        if (StepTable.Find(wanted.Verb) is not { } step || step.IsTypedOnly)
        {
            return default;
        }

        var form = StepForm.NameOf(wanted.Verb);
        if (!step.IsOfJar)
        {
            return (StepForms.OfShop.ContainsKey(form) ? $"/{form}{Query(step, wanted)}" : null, step.Title);
        }

        var subject = step.Fields.First(field => field.IsSubject).Name;
        var jar = wanted.Values.FirstOrDefault(value => value.Name == subject).Value;
        return jar is null || !JarNumber.Read(jar, subject).TryGet(out var number, out _) ? default
            : StepForms.OfJar.ContainsKey(form) ? ($"/J/{number}/{form}{Query(step, wanted)}", step.Title)
            : ($"/J/{number}", $"Jar {number}");
    }

    /// <summary>What stands in an example for a word that only the reader knows.</summary>
    private static readonly string[] StandIns = ["ID", "NAME", "ADDRESS"];

    private static bool IsKnown(string? value) => value is not null && !value.Split('/', ':').Intersect(StandIns).Any();

    private static string Query(Step step, Remedy wanted)
    {
        string[] given = [.. wanted.Values
            .Where(value => IsKnown(value.Value) && step.Fields.Any(field => field.Name == value.Name && field is { IsSubject: false, IsTypedOnly: false, IsObserved: false }))
            .Select(value => $"{Uri.EscapeDataString(value.Name)}={Uri.EscapeDataString(value.Value!)}")];
        return given.Length == 0 ? "" : "?" + string.Join('&', given);
    }
}
