namespace JarLabel.Web.Forms;

/// <summary>Every form there is: one for each declared step.</summary>
internal static class StepForms
{
    private static readonly StepForm[] All = [.. StepTable.All.Where(step => !step.IsTypedOnly).Select(step => new StepForm(step))];

    /// <summary>The forms for a step of one jar, by name, in the order in which they are listed.</summary>
    internal static IReadOnlyDictionary<string, StepForm> OfJar { get; } = All.Where(form => form.Step is { IsOfJar: true, Looks: false }).ToDictionary(form => form.Name, StringComparer.Ordinal);

    /// <summary>The forms for everything else, by the address after the first slash: <c>bag/add</c>.</summary>
    internal static IReadOnlyDictionary<string, StepForm> OfShop { get; } = All.Where(form => !form.Step.IsOfJar).ToDictionary(form => form.Name, StringComparer.Ordinal);
}
