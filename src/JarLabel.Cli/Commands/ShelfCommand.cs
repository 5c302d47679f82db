using System.CommandLine;
using System.Globalization;
using JarLabel.Bench.Keeping;
using JarLabel.Bench.Notices;
using JarLabel.Bench.Recording;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Jars;
using JarLabel.Core.Labels;
using JarLabel.Store.Index;
using UnitsNet;

namespace JarLabel.Cli.Commands;

/// <summary><c>shelf</c>: the jars, soonest use-by first.</summary>
internal static class ShelfCommand
{
    private const int MostShown = 1000;

    private static readonly Option<string> Shelf = new("--shelf") { Description = "Only this shelf.", HelpName = "name" };
    private static readonly Option<bool> Due = new("--due") { Description = "Only jars to test or past their use-by." };
    private static readonly Option<string> First = new("--first") { Description = "So many at most, soonest first; else 1000.", HelpName = "count" };
    private static readonly Option<string> Out = DrawingOptions.Out("Also draw them along time to pin up, one line a jar: a .pdf, .svg or .png file.");
    private static readonly Option<string> Paper = DrawingOptions.PaperOption();

    internal static Command Create(Runner runner) => runner.Runs(new Command("shelf", "The jars, soonest use-by first.") { Shelf, Due, First, PlanCommand.Ics, Out, Paper, SharedOptions.Force }, Run);

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var bench = session.Workbench;
        var day = DateOnly.FromDateTime(bench.Now);
        var query = new ShelfQuery(typed.Text(Shelf), Take: typed.Value(First, Words.WholeNumber(1, MostShown)) ?? MostShown);
        DateOnly? due = typed.Switch(Due) ? day : null;
        var (calendar, drawing, paper) = (typed.File(PlanCommand.Ics), typed.File(Out), DrawingOptions.Of(typed, Paper, session));
        return typed.Then(() => bench.Settings.Shelf(query.Shelf)
            .Then(_ => LedgerDesk.Read(bench, view => ShelfTotals.Of(view).Then(totals => ShelfList.Of(bench, view, query, due).Then<ShelfSight>(list =>
                new ShelfSight(list, totals, [.. ShelfCautions.Of(bench, view, query.Shelf), .. ShelfDates.Cautions(list.Moved)])
                {
                    Standing = due is null ? totals.Where(t => query.Shelf is null || t.Shelf == query.Shelf).Sum(t => t.Jars) : list.Jars.Count,
                }))))
            .Then(sight => calendar is not null
                ? ShelfCalendar.Write(bench, sight.List, calendar).Then<ShelfSight>(file => sight with { Calendar = file })
                : sight)
            .Then(sight => drawing is null
                ? sight
                : DrawShelf.Do(bench, sight.List, query.Shelf, sight.Standing, due is not null, drawing, paper).Then<ShelfSight>(file => sight with { Drawing = file }))
            .Then<Answer>(sight => Say(sight, session)));
    }

    private static Answer Say(ShelfSight sight, Session session) => Answer.Of(
        Show(sight, session),
        new ShelfAnswerJson(
            [.. sight.List.Jars.Select(j => ShelfJarJson.Of(j, sight.List.Learned(j), session.Workbench.Now))],
            sight.List.Jars.Sum(j => j.Liquid.Milliliters),
            [.. sight.Totals.Select(t => new ShelfTotalJson(t.Shelf, t.Jars, t.Liquid.Milliliters, t.Bottles, t.Alcohol.Milliliters))],
            sight.Cautions)
        { Calendar = sight.Calendar, Drawing = sight.Drawing },
        c => c.ShelfAnswerJson,
        sight.Cautions);

    private static Screen Show(ShelfSight sight, Session session)
    {
        var jars = sight.List.Jars;
        var total = Volume.FromMilliliters(jars.Sum(j => j.Liquid.Milliliters));
        var screen = new Screen().Title($"{Capital.Of(ShelfChartText.Shown(jars.Count, sight.Standing))}, {BenchAmount.Both(total, session.Workbench.Metric)} of liquid");
        if (jars.Count > 0)
        {
            screen.Gap().Table(["jar", " cut", "grade", "shelf", " holds", "state", "tested", " use by (estimate)"], [.. jars.Select(j => Row(j, sight.List, session))], i => StateWords.Style(State(jars[i], sight.List, session)));
        }

        if ((sight.Calendar ?? sight.Drawing) is not null)
        {
            screen.Gap().Rows(("calendar", sight.Calendar), ("drawing", sight.Drawing));
        }

        return (sight.Totals.Count > 1 || sight.Totals.Any(t => t.Bottles > 0) ? screen.Gap().Rows(sight.Totals.Select(t => Total(t, session))) : screen)
            .Next(jars.Count > 0 ? $"jarlabel jar {jars[0].Number}" : "jarlabel mix --grade garnet --cut 1.5 --pour \"350 mL\" --solvent ethanol-95 --container \"500 mL\"");
    }

    private static (string, string?) Total(StandingOnShelf total, Session session) =>
        ($"shelf {total.Shelf}", string.Join("; ", ((string?[])
        [
            total.Jars == 0 ? null : $"{ShelfChartText.Shown(total.Jars, total.Jars)}, {BenchAmount.Both(total.Liquid, session.Workbench.Metric)}",
            total.Bottles == 0 ? null : string.Create(CultureInfo.InvariantCulture, $"{total.Bottles} bottle{(total.Bottles == 1 ? "" : "s")} of alcohol, {BenchAmount.Both(total.Alcohol, session.Workbench.Metric)}"),
        ]).OfType<string>()));

    private static string[] Row(JarEntry jar, ShelfList list, Session session) =>
    [
        JarNumber.From(jar.Number).ToString(),
        VulgarFraction.Of(jar.Cut?.PoundsPerUsGallon ?? 0) + " lb",
        jar.Grade,
        jar.Shelf,
        BenchAmount.Both(jar.Liquid, session.Workbench.Metric),
        StateWords.Of(State(jar, list, session)),
        jar.Tested is { } day ? $"{(jar.TestPassed == true ? "passed" : "failed")} {DateWords.Of(day)}" : "never",
        jar.FailedOn is not null ? "none" : list.Learned(jar) is { } now ? $"{DateWords.Of(now.UseBy)}, label out of date" : DateWords.Of(jar.UseBy),
    ];

    private static JarState State(JarEntry jar, ShelfList list, Session session) => ShelfList.StateOf(jar, list.Learned(jar), session.Workbench.Now);
}
