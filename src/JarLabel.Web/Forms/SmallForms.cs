using JarLabel.Bench.Labels;

namespace JarLabel.Web.Forms;

/// <summary>The steps that need a field or two.</summary>
internal static class SmallForms
{
    internal static BenchForm Label { get; } = new(
        "label",
        "Label",
        "Write the label",
        (bench, _) => SharedFields.LabelChoice(bench, seldom: false),
        (bench, jar, entry) =>
        {
            var choice = SharedFields.LabelChoiceOf(entry);
            return entry.Then(() => LabelJar.Do(bench, jar, choice, null));
        })
    { Says = "The label again, as the jar is now.", WorksOut = true, NeedsNothing = true };
}
