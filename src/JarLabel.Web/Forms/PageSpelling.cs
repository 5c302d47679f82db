namespace JarLabel.Web.Forms;

/// <summary>Names as a page writes them: the words beside the field, the title of the step.</summary>
/// <param name="step">The step whose page it is; null for any other page.</param>
internal sealed class PageSpelling(Step? step = null) : ISpelling
{
    /// <summary>What a page has no field for.</summary>
    private static readonly Dictionary<string, string> Others = new(StringComparer.Ordinal)
    {
        ["at"] = StepForm.At.Label,
        ["dry-run"] = "rehearsal",
        ["shop"] = "the shop folder",
    };

    /// <summary>On a page of no step.</summary>
    internal static PageSpelling Any { get; } = new();

    /// <summary>Problems in the page's words.</summary>
    internal IReadOnlyList<Problem> Of(IReadOnlyList<Problem> told) => [.. told.Select(Of)];

    /// <summary>A problem in the page's words; where it is stays a name, by which it finds its field.</summary>
    internal Problem Of(Problem told) => told.In(this, where => where);

    /// <inheritdoc/>
    public string Write(InputName input) => input.Value is null ? $"“{Label(input.Name)}”" : $"“{Label(input.Name)}” {input.Words ?? input.Value}";

    /// <inheritdoc/>
    public string Write(Remedy remedy) => $"“{StepWay.To(remedy).Title}”";

    private string Label(string name) => LabelIn(step, name)
        ?? Others.GetValueOrDefault(name)
        ?? StepTable.All.Select(other => LabelIn(other, name)).FirstOrDefault(label => label is not null)
        ?? name;

    private static string? LabelIn(Step? step, string name) => step?.Fields.FirstOrDefault(one => one.Name == name)?.Label;
}
