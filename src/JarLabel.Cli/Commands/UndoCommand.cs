using System.CommandLine;
using JarLabel.Bench.Changing;
using JarLabel.Cli.Answers;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Jars;

namespace JarLabel.Cli.Commands;

/// <summary><c>undo</c>: takes back the last thing that happened to a jar, by a new event.</summary>
internal static class UndoCommand
{
    private static readonly Argument<string> Jar = JarArgument.One();
    private static readonly NewLabelOptions Label = new();

    internal static Command Create(Runner runner)
    {
        var command = new Command("undo", "Take back the last thing recorded of a jar; nothing is erased, the taking back is recorded too.") { Jar };
        Label.AddTo(command);
        return runner.Runs(command, Run);
    }

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var number = typed.Needed(Jar, JarNumber.Read);
        var label = Label.Read(typed);
        return typed.Then(() => UndoLast.Do(session.Workbench, number, label).Then<Answer>(outcome => JarAnswer.Changed(session, outcome)));
    }
}
