using System.CommandLine;
using System.Globalization;
using JarLabel.Bench.Notices;
using JarLabel.Bench.Recording;
using JarLabel.Cli.Answers;
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

    internal static Command Create(Runner runner) => runner.Runs(new Command("shelf", "The jars, soonest use-by first.") { Shelf, Due }, Run);

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var bench = session.Workbench;
        var day = DateOnly.FromDateTime(bench.Now);
        var query = new ShelfQuery(typed.Text(Shelf), typed.Switch(Due) ? day : null, Take: MostShown);
        return bench.Settings.Shelf(query.Shelf)
            .Then(_ => LedgerDesk.Read(bench, view => Result<(IReadOnlyList<JarEntry>, IReadOnlyList<ShelfTotal>, IReadOnlyList<Problem>)>.Of(
                (view.Shelf(query), view.ShelfTotals(), ShelfCautions.Of(bench, view, query.Shelf)))))
            .Then<Answer>(found => Say(found.Item1, found.Item2, found.Item3, session));
    }

    private static Answer Say(IReadOnlyList<JarEntry> jars, IReadOnlyList<ShelfTotal> totals, IReadOnlyList<Problem> cautions, Session session) => Answer.Of(
        Show(jars, totals, session),
        new ShelfAnswerJson(
            [.. jars.Select(j => ShelfJarJson.Of(j, session.Workbench.Now))],
            jars.Sum(j => j.Liquid.Milliliters),
            [.. totals.Select(t => new ShelfTotalJson(t.Shelf, t.Jars, t.Liquid.Milliliters))],
            cautions),
        AnswerContext.Default.ShelfAnswerJson,
        cautions);

    private static Screen Show(IReadOnlyList<JarEntry> jars, IReadOnlyList<ShelfTotal> totals, Session session)
    {
        var total = Volume.FromMilliliters(jars.Sum(j => j.Liquid.Milliliters));
        var screen = new Screen().Title($"{Jars(jars.Count)}, {BenchAmount.Both(total, session.Workbench.Metric)} of liquid");
        if (jars.Count == 0)
        {
            return screen.Next("jarlabel mix --grade garnet --cut 1.5 --pour \"350 mL\" --solvent ethanol-95 --container \"500 mL\"");
        }

        screen.Gap().Table(["jar", " cut", "grade", "shelf", " holds", "state", "tested", " use by (estimate)"], [.. jars.Select(j => Row(j, session))], i => StateWords.Style(State(jars[i], session)));
        return (totals.Count > 1 ? screen.Gap().Rows(totals.Select(t => Total(t, session))) : screen).Next($"jarlabel jar {jars[0].Number}");
    }

    private static (string, string?) Total(ShelfTotal total, Session session) =>
        ($"shelf {total.Shelf}", $"{Jars(total.Jars)}, {BenchAmount.Both(total.Liquid, session.Workbench.Metric)}");

    private static string[] Row(JarEntry jar, Session session) =>
    [
        JarNumber.From(jar.Number).ToString(),
        VulgarFraction.Of(jar.Cut?.PoundsPerUsGallon ?? 0) + " lb",
        jar.Grade,
        jar.Shelf,
        BenchAmount.Both(jar.Liquid, session.Workbench.Metric),
        StateWords.Of(State(jar, session)),
        jar.Tested is { } day ? $"{(jar.TestPassed == true ? "passed" : "failed")} {DateWords.Of(day)}" : "never",
        DateWords.Of(jar.UseBy),
    ];

    private static JarState State(JarEntry jar, Session session) => ShelfJarJson.StateOf(jar, session.Workbench.Now);

    private static string Jars(int count) => string.Create(CultureInfo.InvariantCulture, $"{count} jar{(count == 1 ? "" : "s")}");
}
