using System.CommandLine;
using JarLabel.Bench.Supplies;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Quantities;
using JarLabel.Core.Supplies;

namespace JarLabel.Cli.Commands;

/// <summary><c>bottle</c>: the bottles and cans of alcohol that batches draw from.</summary>
internal static class BottleCommand
{
    private static readonly Option<string> Solvent = BatchOptions.Solvent();
    private static readonly Option<string> Volume = new("--volume") { Description = "What it holds: \"1 gal\", \"5 L\".", HelpName = "volume" };
    private static readonly Option<string> Since = new("--date") { Description = "When it was bought or opened: 2026-03-01.", HelpName = "date" };
    private static readonly Option<string> Shelf = new("--shelf") { Description = "Where it stands; else the shop's first shelf.", HelpName = "name" };
    private static readonly Option<string> Material = new("--material") { Description = "glass, lined-metal, metal or plastic, for the storage limits.", HelpName = "material" };
    private static readonly Option<string> Note = new("--note") { Description = "Anything else.", HelpName = "text" };
    private static readonly Option<string> Why = new("--why") { Description = "Why it goes.", HelpName = "text" };
    private static readonly Argument<string> Bottle = new("BOTTLE") { Description = "The bottle: 7 or 7-6." };
    private static readonly Argument<string> LeftOver = new("VOLUME") { Description = "What is left by measure: \"200 mL\"." };
    private static readonly NewLabelOptions Label = new();

    internal static Command Create(Runner runner) => new("bottle", "The bottles and cans of alcohol that batches draw from.")
    {
        runner.Runs(Add(), Add),
        runner.Runs(new Command("list", "The bottles with something in them, the oldest first."), List),
        runner.Runs(new Command("left", "Say what is left by measure: bottle left 2 \"200 mL\"") { Bottle, LeftOver }, Left),
        runner.Runs(new Command("move", "Put a bottle on another shelf.") { Bottle, Shelf }, Move),
        runner.Runs(new Command("discard", "Take a bottle out of the shop.") { Bottle, Why }, Discard),
    };

    private static Command Add()
    {
        var command = new Command("add", "Put a new bottle of alcohol into the ledger and print its label.") { Solvent, Volume, Since, Shelf, Material, Note };
        Label.AddTo(command);
        return command;
    }

    private static Result<Answer> Add(Typed typed, Session session)
    {
        var request = new BottleRequest(
            typed.Needed(Solvent, "ethanol-95", session.Solvent),
            typed.Needed(Volume, "\"1 gal\"", VolumeText.Read),
            typed.Needed(Since, "2026-03-01", Words.DayUntil(session.Workbench.Now)),
            typed.Text(Shelf),
            typed.Value(Material, Words.Material),
            typed.Fact(Note, Words.PrintedUpTo(120)),
            Label.Read(typed));
        return typed.Then(() => BottleDesk.Add(session.Workbench, request).Then<Answer>(outcome => SupplyAnswer.Of(session.Workbench, outcome)));
    }

    private static Result<Answer> List(Typed typed, Session session) => SupplyBook.Bottles(session.Workbench).Then<Answer>(bottles => SupplyAnswer.Of(session.Workbench, bottles));

    private static Result<Answer> Left(Typed typed, Session session)
    {
        var (bottle, volume) = (typed.Needed(Bottle, SupplyNumber.ReadBottle), typed.Needed(LeftOver, VolumeText.Read));
        return typed.Then(() => BottleDesk.Left(session.Workbench, bottle, volume).Then<Answer>(outcome => SupplyAnswer.Of(session.Workbench, outcome)));
    }

    private static Result<Answer> Move(Typed typed, Session session)
    {
        var (bottle, shelf) = (typed.Needed(Bottle, SupplyNumber.ReadBottle), typed.Needed(Shelf, "main", Words.TextUpTo(40)));
        return typed.Then(() => BottleDesk.Move(session.Workbench, bottle, shelf).Then<Answer>(outcome => SupplyAnswer.Of(session.Workbench, outcome)));
    }

    private static Result<Answer> Discard(Typed typed, Session session)
    {
        var (bottle, why) = (typed.Needed(Bottle, SupplyNumber.ReadBottle), typed.Fact(Why, Words.PrintedUpTo(120)));
        return typed.Then(() => BottleDesk.Discard(session.Workbench, bottle, why).Then<Answer>(outcome => SupplyAnswer.Of(session.Workbench, outcome)));
    }
}
