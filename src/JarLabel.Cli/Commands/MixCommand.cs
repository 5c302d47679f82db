using System.CommandLine;
using JarLabel.Bench.Mixing;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Supplies;

namespace JarLabel.Cli.Commands;

/// <summary><c>mix</c>: solves a batch, records the jar, writes its label.</summary>
internal static class MixCommand
{
    private static readonly Option<string> Grade = new("--grade") { Description = "The flakes: garnet, blonde, orange-dewaxed, seedlac, ...", HelpName = "id" };
    private static readonly Option<string> Solvent = BatchOptions.Solvent();
    private static readonly Option<string> Bag = SupplyOptions.Bag();
    private static readonly Option<string> Bottle = SupplyOptions.Bottle();
    private static readonly BatchOptions Batch = new();
    private static readonly ContainerOptions Container = new();
    private static readonly FlakeOptions Flakes = new();
    private static readonly Option<string> Shelf = new("--shelf") { Description = "The shelf it goes to; else the shop's first.", HelpName = "name" };
    private static readonly Option<string> By = new("--by") { Description = "Who mixed it.", HelpName = "name" };
    private static readonly Option<string> Job = new("--job") { Description = "What it is for: \"viola top\".", HelpName = "text" };
    private static readonly Option<string> Note = new("--note") { Description = "Anything else.", HelpName = "text" };
    private static readonly NewLabelOptions Label = new();
    private static readonly MixListOptions List = new();

    internal static Command Create(Runner runner)
    {
        var command = new Command("mix", "Mix a batch: --grade, --solvent, --cut and one of --pour, --flakes, --makes, --fill; or a list of batches.") { Grade, Solvent, Bag, Bottle };
        Batch.AddTo(command);
        Container.AddTo(command);
        Flakes.AddTo(command);
        foreach (var option in (Option[])[Shelf, By, Job, Note])
        {
            command.Add(option);
        }

        Label.AddTo(command);
        List.AddTo(command);
        return runner.Runs(command, Run);
    }

    private static Result<Answer> Run(Typed typed, Session session) => List.Given(typed) ? List.Run(typed, session, Label) : One(typed, session);

    private static Result<Answer> One(Typed typed, Session session)
    {
        var bench = session.Workbench;
        var order = Batch.Read(typed);
        var (bag, bottle) = (typed.Value(Bag, SupplyNumber.ReadBag), typed.Value(Bottle, SupplyNumber.ReadBottle));
        var request = new MixRequest(
            typed.Text(Bag) is not null && typed.Text(Grade) is null ? SupplyOptions.GradeIn(bag, typed, session) : typed.Needed(Grade, "garnet", session.Grade),
            typed.Text(Bottle) is not null && typed.Text(Solvent) is null ? SupplyOptions.SolventIn(bottle, typed, session) : typed.Needed(Solvent, "ethanol-95", session.Solvent),
            order,
            Container.Read(typed, order.Fill),
            Flakes.Form(typed, session),
            Flakes.Day(typed, session),
            Batch.ReadTemperature(typed),
            typed.Text(Shelf),
            typed.Fact(By, Words.PrintedUpTo(60)),
            typed.Fact(Job, Words.PrintedUpTo(120)),
            typed.Fact(Note, Words.PrintedUpTo(500)),
            Label.Read(typed))
        {
            Bag = bag,
            Bottle = bottle,
        };
        return typed.Then(() => MixJar.Do(bench, request).Then<Answer>(outcome => JarAnswer.Mixed(session.Workbench, outcome)));
    }
}
