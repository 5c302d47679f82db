using System.CommandLine;
using JarLabel.Bench.Supplies;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Quantities;
using JarLabel.Core.Supplies;

namespace JarLabel.Cli.Commands;

/// <summary><c>bag</c>: the bags of flakes that batches draw from.</summary>
internal static class BagCommand
{
    private static readonly Option<string> Grade = new("--grade") { Description = "The flakes: garnet, blonde, orange-dewaxed, seedlac, ...", HelpName = "id" };
    private static readonly Option<string> Weight = new("--mass") { Description = "What the bag holds: \"1 lb\", \"500 g\".", HelpName = "weight" };
    private static readonly Option<string> Made = new("--date") { Description = "When the flakes were made or bought: 2025-10-01.", HelpName = "date" };
    private static readonly Option<string> Note = new("--note") { Description = "Anything else.", HelpName = "text" };
    private static readonly Option<string> Why = new("--why") { Description = "Why it goes.", HelpName = "text" };
    private static readonly Argument<string> Bag = new("BAG") { Description = "The bag: 12 or 12-9." };
    private static readonly Argument<string> LeftOver = new("WEIGHT") { Description = "What the scale says: \"120 g\"." };
    private static readonly Argument<string> Pinch = new("PINCH") { Description = "all when it dissolved, cloudy when haze or specks stay beyond a waxy grade's wax, gel when it swelled or left lumps." };
    private static readonly NewLabelOptions Label = new();

    internal static Command Create(Runner runner) => new("bag", "The bags of flakes that batches draw from.")
    {
        runner.Runs(Add(), Add),
        runner.Runs(new Command("list", "The bags with something in them, the oldest flakes first."), List),
        runner.Runs(new Command("left", "Say what the scale says is left: bag left 3 \"120 g\"") { Bag, LeftOver }, Left),
        runner.Runs(new Command("test", "Say how a pinch dissolved overnight in a little alcohol: bag test 3 cloudy") { Bag, Pinch }, Test),
        runner.Runs(new Command("discard", "Take a bag out of the shop.") { Bag, Why }, Discard),
    };

    private static Command Add()
    {
        var command = new Command("add", "Put a new bag of flakes into the ledger and print its label.") { Grade, Weight, Made, Note };
        Label.AddTo(command);
        return command;
    }

    private static Result<Answer> Add(Typed typed, Session session)
    {
        var request = new BagRequest(
            typed.Needed(Grade, "garnet", session.Grade),
            typed.Needed(Weight, "\"500 g\"", MassText.Read),
            typed.Needed(Made, "2025-10-01", Words.DayUntil(session.Workbench.Now)),
            typed.Fact(Note, Words.PrintedUpTo(120)),
            Label.Read(typed));
        return typed.Then(() => BagDesk.Add(session.Workbench, request).Then<Answer>(outcome => SupplyAnswer.Of(session.Workbench, outcome)));
    }

    private static Result<Answer> List(Typed typed, Session session) => SupplyBook.Bags(session.Workbench).Then<Answer>(bags => SupplyAnswer.Of(session.Workbench, bags));

    private static Result<Answer> Left(Typed typed, Session session)
    {
        var (bag, weight) = (typed.Needed(Bag, SupplyNumber.ReadBag), typed.Needed(LeftOver, MassText.Read));
        return typed.Then(() => BagDesk.Left(session.Workbench, bag, weight).Then<Answer>(outcome => SupplyAnswer.Of(session.Workbench, outcome)));
    }

    private static Result<Answer> Test(Typed typed, Session session)
    {
        var (bag, pinch) = (typed.Needed(Bag, SupplyNumber.ReadBag), typed.Needed(Pinch, Words.Pinch));
        return typed.Then(() => BagDesk.Test(session.Workbench, bag, pinch).Then<Answer>(outcome => SupplyAnswer.Of(session.Workbench, outcome)));
    }

    private static Result<Answer> Discard(Typed typed, Session session)
    {
        var (bag, why) = (typed.Needed(Bag, SupplyNumber.ReadBag), typed.Fact(Why, Words.PrintedUpTo(120)));
        return typed.Then(() => BagDesk.Discard(session.Workbench, bag, why).Then<Answer>(outcome => SupplyAnswer.Of(session.Workbench, outcome)));
    }
}
