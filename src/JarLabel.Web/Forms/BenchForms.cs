namespace JarLabel.Web.Forms;

/// <summary>Every form.</summary>
internal static class BenchForms
{
    /// <summary>The forms for a step of one jar, by the command's name, in the order of their buttons.</summary>
    internal static IReadOnlyDictionary<string, BenchForm> OfJar { get; } = ((BenchForm[])
    [
        ThinForm.Form,
        ThickenForm.Form,
        SmallForms.Use,
        TestForm.Form,
        SmallForms.Note,
        SmallForms.Move,
        SmallForms.Label,
        SmallForms.Discard,
        SmallForms.Undo,
    ]).ToDictionary(form => form.Name, StringComparer.Ordinal);

    /// <summary>The form with this name.</summary>
    internal static BenchForm Named(string name) => name == MixForm.Form.Name ? MixForm.Form : OfJar[name];
}
