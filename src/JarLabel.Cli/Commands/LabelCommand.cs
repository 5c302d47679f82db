using System.CommandLine;
using JarLabel.Bench.Labels;
using JarLabel.Cli.Answers;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Jars;

namespace JarLabel.Cli.Commands;

/// <summary><c>label</c>: prints a jar's label again, as the jar is now.</summary>
internal static class LabelCommand
{
    private static readonly Argument<string> Jar = JarArgument.One();
    internal static readonly Option<string> Out = new("--out") { Description = "The file to write: .pdf, .png or .svg; else a PDF in the shop's labels folder.", HelpName = "file" };
    private static readonly LabelOptions Label = new();

    internal static Command Create(Runner runner)
    {
        var command = new Command("label", "Print a jar's label again, as the jar is now.") { Jar, Out };
        Label.AddTo(command);
        return runner.Runs(command, Run);
    }

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var number = typed.Needed(Jar, JarNumber.Read);
        var choice = Label.Read(typed);
        return typed.Then(() => LabelJar.Do(session.Workbench, number, choice, FileOf(typed)).Then<Answer>(outcome => JarAnswer.Labelled(session, outcome)));
    }

    /// <summary>The file to write, or null for the usual place.</summary>
    internal static string? FileOf(Typed typed) => typed.Text(Out) is { } named ? Path.GetFullPath(named) : null;
}
