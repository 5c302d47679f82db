using JarLabel.Operations.Labels;

namespace JarLabel.Web.Pages;

/// <summary>What a step comes to: what the hands do, what is in the jar then, and the label as it will print.</summary>
internal static class StepResult
{
    internal static Markup Of(Workbench bench, Outcome outcome) => outcome.Jar is { Made.Count: 0 } jar ? Of(bench, jar) : Html.Of(
        $"""{BlockParts.Of(outcome.Answer.Screen)}{ProblemPage.Cautions(outcome.Answer.Warnings, outcome.Jar?.History.Jar.Number)}""");

    /// <summary>The same of a step that only looks, with what comes next.</summary>
    internal static Markup Looked(Workbench bench, Outcome outcome) => Html.Of($"""{Of(bench, outcome)}{StepLinks.Row([.. BlockParts.Next(outcome.Answer.Screen), .. outcome.Ways])}""");

    private static Markup Of(Workbench bench, JarOutcome outcome) => Html.Of(
        $"""{JarParts.Rows([.. Rows(bench, outcome)])}{ProblemPage.Cautions(outcome.Cautions, outcome.History.Jar.Number)}{Label(bench, outcome)}""");

    private static IEnumerable<(string, string?)> Rows(Workbench bench, JarOutcome outcome)
    {
        var jar = outcome.History.Jar;
        (string, string?)[] fits = jar.Container.Holds is { } holds && !jar.Contents.IsEmpty ? [("fits", $"the jar of {BenchAmount.Both(holds, bench.Metric)}, with head space")] : [];
        return outcome.Step is null
            ? []
            : [.. Hands(bench, outcome.Step, jar), (outcome.Step is Discarded ? "held" : "holds then", outcome.Step is Mixed ? null : Held(bench, jar)), ("waste", outcome.Step is Discarded ? WasteWords.OfWhatIsLeft : null), .. AlsoRows.Of(bench, outcome), .. fits, .. jar.OnShelf ? Dates(outcome.Step, jar) : [], .. JarAnswer.IsMade(outcome) ? DangerRows.Of(bench, outcome.Hazards) : []];
    }

    private static IEnumerable<(string, string?)> Hands(Workbench bench, JarEvent step, Jar jar) => step is Mixed
        ? RecipeRows.Of(jar.Contents, bench.Catalog, bench.Metric)
        : StepRows.Of(step, bench.Catalog, bench.Metric);

    private static string Held(Workbench bench, Jar jar) =>
        jar.Contents.Cut is { } cut ? $"{BenchAmount.Both(jar.Contents.Liquid, bench.Metric)} of {CutWords.Of(cut)}, {CutWords.Metric(cut)}" : "nothing more";

    private static IEnumerable<(string, string?)> Dates(JarEvent step, Jar jar) =>
    [
        ("ready", step is Mixed or Thickened ? $"≈ {DateWords.Of(jar.Dates.Ready)}; swirl it every hour or two until then" : null),
        ("dissolving", step is Mixed or Thickened ? DissolveWords.Safely : null),
        .. FailureWords.Rows(jar),
    ];

    private static Markup Label(Workbench bench, JarOutcome outcome)
    {
        if (outcome.Label is not { } label
            || !LabelProof.Svg(bench, outcome.History, outcome.Hazards, new LabelChoice(label.Event.Design, label.Event.Sheet)).TryGet(out var svg, out _))
        {
            return default;
        }

        return Html.Of(
            $"""
            <img class="label" alt="The label of jar {outcome.History.Jar.Number} as it prints" src="data:image/svg+xml;base64,{Convert.ToBase64String(svg)}">
            {JarParts.Rows([("on", $"{label.Event.Sheet}, place {label.Event.Position}; print at actual size"), .. Rules(label)])}
            """);
    }

    private static IEnumerable<(string, string?)> Rules(WrittenLabel label) =>
    [
        ("meets", label.Rules.Satisfies.Count == 0 ? null : string.Join("; ", label.Rules.Satisfies)),
        .. ListedRows.Of("not met", label.Rules.Lacks),
    ];
}
