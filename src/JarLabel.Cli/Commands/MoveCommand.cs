using System.CommandLine;
using JarLabel.Bench.Changing;
using JarLabel.Cli.Answers;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Jars;

namespace JarLabel.Cli.Commands;

/// <summary><c>move</c>: puts a jar on another shelf.</summary>
internal static class MoveCommand
{
    private static readonly Argument<string> Jar = JarArgument.One();
    private static readonly Option<string> Shelf = new("--shelf") { Description = "The shelf it goes to.", HelpName = "name" };
    private static readonly NewLabelOptions Label = new();

    internal static Command Create(Runner runner)
    {
        var command = new Command("move", "Put a jar on another shelf; on a warmer one its use-by comes sooner and it gets a new label.") { Jar, Shelf };
        Label.AddTo(command);
        return runner.Runs(command, Run);
    }

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var number = typed.Needed(Jar, JarNumber.Read);
        var shelf = typed.Needed(Shelf, "main", Words.TextUpTo(40));
        var label = Label.Read(typed);
        return typed.Then(() => MoveJar.Do(session.Workbench, number, shelf, label).Then<Answer>(outcome => JarAnswer.Changed(session, outcome)));
    }
}
