using System.CommandLine;
using System.Globalization;
using JarLabel.Bench.Notices;
using JarLabel.Bench.Recording;
using JarLabel.Cli.Answers;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Jars;
using JarLabel.Core.Keeping;
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
            .Then(_ => LedgerDesk.Read(bench, view => Result<(IReadOnlyList<JarEntry>, IReadOnlyList<Problem>)>.Of((view.Shelf(query), ShelfCautions.Of(bench, view, query.Shelf)))))
            .Then<Answer>(found => Say(found.Item1, found.Item2, session));
    }

    private static Answer Say(IReadOnlyList<JarEntry> jars, IReadOnlyList<Problem> cautions, Session session) => Answer.Of(
        Show(jars, session),
        new ShelfAnswerJson([.. jars.Select(j => ShelfJarJson.Of(j, session.Workbench.Now))], jars.Sum(j => j.Liquid.Milliliters), cautions),
        AnswerContext.Default.ShelfAnswerJson,
        cautions);

    private static Screen Show(IReadOnlyList<JarEntry> jars, Session session)
    {
        var total = Volume.FromMilliliters(jars.Sum(j => j.Liquid.Milliliters));
        var screen = new Screen().Title(string.Create(CultureInfo.InvariantCulture, $"{jars.Count} jar{(jars.Count == 1 ? "" : "s")}, {BenchAmount.Both(total, session.Workbench.Metric)} of liquid"));
        return jars.Count == 0
            ? screen.Next("jarlabel mix --grade garnet --cut 1.5 --pour \"350 mL\" --solvent ethanol-95 --container \"500 mL\"")
            : screen.Gap().Table(["jar", " cut", "grade", "shelf", " holds", "state", " use by (estimate)"], [.. jars.Select(j => Row(j, session))])
                .Next($"jarlabel jar {jars[0].Number}");
    }

    private static string[] Row(JarEntry jar, Session session) =>
    [
        JarNumber.From(jar.Number).ToString(),
        VulgarFraction.Of(jar.Cut?.PoundsPerUsGallon ?? 0) + " lb",
        jar.Grade,
        jar.Shelf,
        BenchAmount.Both(jar.Liquid, session.Workbench.Metric),
        StateWords.Of(new KeepingDates(jar.Ready, jar.TestFrom, jar.UseBy).StateAt(session.Workbench.Now)),
        DateWords.Of(jar.UseBy),
    ];
}
