namespace JarLabel.Web.Forms;

/// <summary>The page of a step that a message or a list names, and what it is called there: its form, filled in; for looking at a jar, the jar's page.</summary>
/// <param name="Address">Where it is; null where it has no page.</param>
/// <param name="Title">What its link is called.</param>
/// <param name="OfJar">The jar whose form it is; null for any other.</param>
internal readonly record struct StepWay(string? Address, string Title, JarNumber? OfJar = null)
{
    /// <summary>What stands in an example for a word that only the reader knows.</summary>
    private static readonly string[] StandIns = ["ID", "NAME", "ADDRESS"];

    /// <summary>The way to a step.</summary>
    internal static StepWay To(Remedy wanted)
    {
        if (wanted.Values.Count == 0 && StepTable.Find(wanted.Verb)?.OnPages is { } better)
        {
            return To(new Remedy(better));
        }

        if (StepTable.Find(wanted.Verb) is not { } step || step.IsTypedOnly)
        {
            return new(null, StepTable.Find(wanted.Verb)?.Title ?? wanted.Verb);
        }

        var form = StepForm.NameOf(wanted.Verb);
        if (!step.IsOfJar)
        {
            return new(StepForms.OfShop.ContainsKey(form) ? $"/{form}{Query(step, wanted)}" : null, step.Title);
        }

        var subject = step.Fields.First(field => field.IsSubject).Name;
        var jar = wanted.Values.FirstOrDefault(value => value.Name == subject).Value;
        return jar is null || !JarNumber.Read(jar, subject).TryGet(out var number, out _) ? new(null, step.Title)
            : StepForms.OfJar.ContainsKey(form) ? new($"/J/{number}/{form}{Query(step, wanted)}", step.Title, number)
            : new($"/J/{number}", $"Jar {number}");
    }

    private static bool IsKnown(string? value) => value is not null && !value.Split('/', ':').Intersect(StandIns).Any();

    private static string Query(Step step, Remedy wanted)
    {
        string[] given = [.. wanted.Values
            .Where(value => IsKnown(value.Value) && step.Fields.Any(field => field.Name == value.Name && field is { IsSubject: false, IsTypedOnly: false, IsObserved: false }))
            .Select(value => $"{Uri.EscapeDataString(value.Name)}={Uri.EscapeDataString(value.Value!)}")];
        return given.Length == 0 ? "" : "?" + string.Join('&', given);
    }
}
