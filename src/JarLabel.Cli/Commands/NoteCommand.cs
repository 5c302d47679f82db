using System.CommandLine;
using JarLabel.Bench.Changing;
using JarLabel.Cli.Answers;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Jars;

namespace JarLabel.Cli.Commands;

/// <summary><c>note</c>: writes something down about a jar.</summary>
internal static class NoteCommand
{
    private static readonly Argument<string> Jar = JarArgument.One();
    private static readonly Argument<string> Text = new("TEXT") { Description = "What there is to say." };

    internal static Command Create(Runner runner) => runner.Runs(new Command("note", "Write something down about a jar.") { Jar, Text }, Run);

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var number = typed.Needed(Jar, JarNumber.Read);
        var text = typed.Needed(Text, Words.PrintedUpTo(500));
        return typed.Then(() => NoteJar.Do(session.Workbench, number, text).Then<Answer>(outcome => JarAnswer.Changed(session, outcome)));
    }
}
