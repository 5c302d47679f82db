using JarLabel.Bench.Steps;

namespace JarLabel.Web.Forms;

/// <summary>Every form.</summary>
internal static class BenchForms
{
    /// <summary>The forms for a step of one jar, by the command's name, in the order of their buttons.</summary>
    internal static IReadOnlyDictionary<string, BenchForm> OfJar { get; } = ((BenchForm[])
    [
        StepForm.Of(ThinStep.Step),
        StepForm.Of(ThickenStep.Step),
        StepForm.Of(UseStep.Step),
        TestForm.Form,
        StepForm.Of(SmallSteps.Note),
        StepForm.Of(SmallSteps.Move),
        SmallForms.Label,
        StepForm.Of(SmallSteps.Discard),
        StepForm.Of(SmallSteps.Undo),
    ]).ToDictionary(form => form.Name, StringComparer.Ordinal);

    /// <summary>The form with this name.</summary>
    internal static BenchForm Named(string name) => name == MixForm.Form.Name ? MixForm.Form : OfJar[name];
}
