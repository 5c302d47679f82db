using System.CommandLine;
using JarLabel.Bench.Changing;
using JarLabel.Cli.Answers;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Jars;
using JarLabel.Core.Supplies;

namespace JarLabel.Cli.Commands;

/// <summary><c>thicken</c>: says what flakes to add for a stronger cut, records it, writes the new label.</summary>
internal static class ThickenCommand
{
    private static readonly Argument<string> Jar = JarArgument.One();
    private static readonly ChangedJarOptions Change = new();
    private static readonly Option<string> Grade = new("--grade") { Description = "The flakes to add; else the grade that most of it is.", HelpName = "id" };
    private static readonly Option<string> Bag = SupplyOptions.Bag();
    private static readonly FlakeOptions Flakes = new();

    internal static Command Create(Runner runner)
    {
        var command = new Command("thicken", "Thicken a jar to a stronger cut: says what flakes to add, records it, writes the new label.") { Jar, Grade, Bag };
        Flakes.AddTo(command);
        Change.AddTo(command);
        return runner.Runs(command, Run);
    }

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var request = new ThickenRequest(
            typed.Needed(Jar, JarNumber.Read),
            Change.To(typed, "2"),
            typed.Fact(Grade, session.Grade),
            Flakes.Form(typed, session),
            Flakes.Day(typed, session),
            Change.Temperature(typed),
            Change.Container(typed),
            Change.Label(typed))
        {
            Bag = typed.Value(Bag, SupplyNumber.ReadBag),
        };
        return typed.Then(() => ThickenJar.Do(session.Workbench, request).Then<Answer>(outcome => JarAnswer.Changed(session, outcome)));
    }
}
