using System.CommandLine;
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
                return drawn.Then<Answer>(_ => KeepingAnswer.Of(session.Workbench, lives, kinds, drawing));
            }));
    }

    private static IEnumerable<LifeClass> Wanted(LearnedLives lives, string? keeping, string? solvent) => keeping is not null && solvent is not null
        ? [new LifeClass(keeping, solvent)]
        : lives.Tested.Where(c => (keeping is null || c.Keeping == keeping) && (solvent is null || c.Solvent == solvent));
}
