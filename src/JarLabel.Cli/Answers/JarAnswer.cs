using System.Text.Json.Nodes;
using JarLabel.Bench;
using JarLabel.Bench.Labels;
using JarLabel.Core.Hazards;
using JarLabel.Core.Jars;
using JarLabel.Core.Labels;

namespace JarLabel.Cli.Answers;

/// <summary>What the commands about one jar say.</summary>
internal static class JarAnswer
{
    /// <summary>After mixing: what the hands do now, when, and where the label is.</summary>
    internal static Answer Mixed(Session session, BenchOutcome outcome)
    {
        var jar = outcome.History.Jar;
        var screen = Begin(session, jar)
            .Rows([.. Recipe(session, jar), .. Keeping(jar), .. Label(outcome.Label)])
            .Gap().Rows(HazardRows(session, outcome.Hazards));
        return With(session, outcome, screen.Next(session.Workbench.DryRun ? "the same without --dry-run records it" : $"jarlabel jar {jar.Number.Value}"), history: false);
    }

    /// <summary>After a reprint.</summary>
    internal static Answer Labelled(Session session, BenchOutcome outcome) =>
        With(session, outcome, Begin(session, outcome.History.Jar).Rows([.. Label(outcome.Label)]).Next($"jarlabel jar {outcome.History.Jar.Number.Value}"), history: false);

    /// <summary>A jar looked up.</summary>
    internal static Answer Shown(Session session, BenchOutcome outcome)
    {
        var jar = outcome.History.Jar;
        var screen = Begin(session, jar)
            .Rows([("state", StateWords.Of(jar.StateAt(session.Workbench.Now))), ("shelf", jar.Shelf), .. Recipe(session, jar), .. Keeping(jar), ("job", jar.Job), ("by", jar.By), ("note", jar.Note)])
            .Gap().Rows(HazardRows(session, outcome.Hazards))
            .Gap().Rows(outcome.History.Events.Select(e => (DateWords.Of(e.Event.At), HistoryWords.Of(e.Event))));
        return With(session, outcome, screen.Next($"jarlabel label {jar.Number.Value}"), history: true);
    }

    private static Screen Begin(Session session, Jar jar) =>
        new Screen().Title($"Jar {jar.Number} · {JarTitle.Of(jar, session.Workbench.Catalog)}").Gap();

    private static IEnumerable<(string, string?)> Recipe(Session session, Jar jar)
    {
        var catalog = session.Workbench.Catalog;
        return jar.Contents.Recipe is { } recipe
            ? RecipeRows.Of(recipe, catalog.Solvents.Find(jar.Contents.Solvents[0].Solvent)!, $"{catalog.Grades.Find(jar.Contents.Resins[0].Grade)!.Name} flakes", session.Workbench.Metric)
            : [];
    }

    private static IEnumerable<(string, string?)> Keeping(Jar jar) =>
    [
        ("ready", $"≈ {DateWords.Of(jar.Dates.Ready)}; swirl it every hour or two until then"),
        ("test from", DateWords.Estimate(jar.Dates.TestFrom)),
        ("use by", $"{DateWords.Estimate(jar.Dates.UseBy)}, an estimate: try a few drops on glass"),
    ];

    private static IEnumerable<(string, string?)> Label(WrittenLabel? label) => label is null
        ? []
        : [("label", $"{label.File}"), ("on", $"{label.Event.Sheet}, place {label.Event.Position}; print at actual size")];

    private static IEnumerable<(string, string?)> HazardRows(Session session, HazardAssessment hazards) =>
        hazards.StatementTexts(session.Workbench.Catalog).Select((text, i) => (i == 0 ? hazards.SignalText ?? "hazards" : "", (string?)text));

    private static Answer With(Session session, BenchOutcome outcome, Screen screen, bool history)
    {
        var jar = outcome.History.Jar;
        var label = outcome.Label;
        return Answer.Of(
            screen,
            new JarAnswerJson(
                JarJson.Of(jar, session.Workbench.Now),
                jar.Contents.Recipe is { } recipe ? RecipeJson.Of(recipe, jar.Contents.Resins[0].Grade, jar.Contents.Solvents[0].Solvent) : null,
                HazardsJson.Of(outcome.Hazards),
                label is null ? null : new LabelJson(label.File, label.Event.Design, label.Event.Sheet, label.Event.Position, label.Event.Payload),
                history ? [.. outcome.History.Events.Select(e => HistoryItem(e.Event, e.Revision))] : null,
                outcome.Cautions),
            AnswerContext.Default.JarAnswerJson,
            outcome.Cautions);
    }

    private static JsonObject HistoryItem(JarEvent happened, int revision)
    {
        var item = JsonNode.Parse(JarEventJson.Write(happened))!.AsObject();
        item["revision"] = revision;
        return item;
    }
}
