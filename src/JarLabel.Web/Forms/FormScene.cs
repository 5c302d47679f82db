namespace JarLabel.Web.Forms;

/// <summary>A form as it stands: what it is for, what was filled in, what came of it.</summary>
/// <param name="Form">The form.</param>
/// <param name="Bench">The shop.</param>
/// <param name="History">The jar; null for a new one.</param>
/// <param name="Token">The mark that it is ours.</param>
/// <param name="Values">What was filled in.</param>
/// <param name="Problems">What is to be mended.</param>
/// <param name="Result">What was worked out.</param>
internal sealed record FormScene(
    StepForm Form, Workbench Bench, JarHistory? History, string Token, FormValues Values, IReadOnlyList<Problem> Problems, Markup Result)
{
    /// <summary>Where it is sent.</summary>
    internal string Address => History is null ? $"/{Form.Name}" : $"/J/{History.Jar.Number}/{Form.Name}";

    /// <summary>What is shown while one types.</summary>
    internal Markup Live() => Problems.Count > 0 ? Html.All(Problems.Select(ProblemPage.Line)) : Result;
}
