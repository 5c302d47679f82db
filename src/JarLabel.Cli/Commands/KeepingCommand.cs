using System.CommandLine;
using System.Globalization;
using JarLabel.Bench.Keeping;
using JarLabel.Bench.Recording;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Keeping;

namespace JarLabel.Cli.Commands;

/// <summary><c>keeping</c>: how long each kind of jar keeps, by published claims and by the shop's own drying tests.</summary>
internal static class KeepingCommand
{
    private static readonly Option<string> Grade = new("--grade") { Description = "Only these flakes; with --solvent also where none were tested.", HelpName = "id" };
    private static readonly Option<string> Solvent = new("--solvent") { Description = "Only this solvent.", HelpName = "id" };
    private static readonly Option<string> Out = DrawingOptions.Out("Also draw it: the share that still dries hard by age, its band, the use-by age and the tests; a .pdf (a page a kind), .svg or .png file.");

    internal static Command Create(Runner runner) =>
        runner.Runs(new Command("keeping", "How long each kind keeps at 20 °C, as learned from the shop's drying tests.") { Grade, Solvent, Out, SharedOptions.Force }, Run);

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var keeping = typed.Fact(Grade, session.Grade)?.Keeping;
        var solvent = typed.Fact(Solvent, session.Solvent)?.Id;
        var drawing = typed.File(Out);
        var bench = session.Workbench;
        return typed.Then(() => LedgerDesk.Read(bench, view => ShopLives.Tested(bench, view))
            .Then(tested =>
            {
                var lives = ShopLives.From(bench, tested);
                LifeClass[] kinds = [.. Wanted(lives, keeping, solvent)];
                var drawn = drawing is null ? "" : DrawLives.Do(bench, kinds, lives, tested, drawing);
                return drawn.Then<Answer>(_ => Say(session, [.. kinds.Select(lives.Of)], drawing));
            }));
    }

    private static IEnumerable<LifeClass> Wanted(LearnedLives lives, string? keeping, string? solvent) => keeping is not null && solvent is not null
        ? [new LifeClass(keeping, solvent)]
        : lives.Tested.Where(c => (keeping is null || c.Keeping == keeping) && (solvent is null || c.Solvent == solvent));

    private static Answer Say(Session session, IReadOnlyList<LifeEstimate> estimates, string? drawing) => Answer.Of(
        Show(session, estimates, drawing),
        new KeepingAnswerJson(session.Workbench.Settings.Learning.StillGood, [.. estimates.Select(LifeEstimateJson.Of)], []) { Drawing = drawing },
        c => c.KeepingAnswerJson);

    private static Screen Show(Session session, IReadOnlyList<LifeEstimate> estimates, string? drawing)
    {
        var share = session.Workbench.Settings.Learning.StillGood.ToString("0.## %", CultureInfo.InvariantCulture);
        var screen = new Screen().Title($"Months at 20 °C after which {share} of jars should still dry hard: estimates");
        if (estimates.Count == 0)
        {
            return screen.Gap().Text("No jar was tested yet: every use-by stands on published claims.").Next("jarlabel test 1 pass");
        }

        var table = Table(screen, estimates);
        return (drawing is null ? table : table.Gap().Rows(("drawing", drawing))).Next("jarlabel shelf --due");
    }

    private static Screen Table(Screen screen, IReadOnlyList<LifeEstimate> estimates) => screen.Gap().Table(
        ["kind", " claims", " learned", " 90 % band", " tests", " jars", " failed", "other jars"],
        [.. estimates.Select(Row)]);

    private static string[] Row(LifeEstimate e) =>
    [
        e.Class.ToString(),
        Months(e.BaseMonths),
        Months(e.Months),
        $"{Months(e.Low)} to {Months(e.High)}",
        Count(e.Tests),
        Count(e.Lives.Count),
        Count(e.Lives.Count(l => l.Ended)),
        Count(e.Related),
    ];

    private static string Months(double months) => months.ToString("0.0", CultureInfo.InvariantCulture);

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);
}
