using JarLabel.Bench.Changing;
using JarLabel.Bench.Labels;
using JarLabel.Bench.Typing;

namespace JarLabel.Web.Forms;

/// <summary>The steps that need a field or two.</summary>
internal static class SmallForms
{
    private const int LongestMinutes = 1440;

    internal static BenchForm Test { get; } = new(
        "test",
        "Test",
        "Record the test",
        (_, _) =>
        [
            new("VERDICT", "A few drops on glass") { Choices = [("", "choose"), ("pass", "dried hard: pass"), ("fail", "stayed soft or tacky: fail")] },
            new("--dry-minutes", "Minutes until dry", "may stay empty"),
        ],
        (bench, jar, entry) =>
        {
            var passed = entry.Needed("VERDICT", "pass", Words.Verdict);
            var minutes = entry.Value("--dry-minutes", Words.WholeNumber(1, LongestMinutes));
            return entry.Then(() => TestJar.Do(bench, jar, passed, minutes));
        });

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
