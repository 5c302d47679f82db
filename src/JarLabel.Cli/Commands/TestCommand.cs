using System.CommandLine;
using JarLabel.Bench.Changing;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Jars;

namespace JarLabel.Cli.Commands;

/// <summary><c>test</c>: how a few drops of a jar dried on glass.</summary>
internal static class TestCommand
{
    private const int LongestMinutes = 1440;

    private static readonly Argument<string> Jar = JarArgument.One();
    private static readonly Argument<string> Verdict = new("VERDICT") { Description = "pass when the drops dried hard, fail when they stayed soft or tacky." };
    private static readonly Option<string> DryMinutes = new("--dry-minutes") { Description = "How long they took to dry.", HelpName = "minutes" };

    internal static Command Create(Runner runner) => runner.Runs(new Command("test", "Record how a few drops dried on glass.") { Jar, Verdict, DryMinutes }, Run);

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var number = typed.Needed(Jar, JarNumber.Read);
        var passed = typed.Needed(Verdict, Words.Verdict);
        var minutes = typed.Value(DryMinutes, Words.WholeNumber(1, LongestMinutes));
        return typed.Then(() => TestJar.Do(session.Workbench, number, passed, minutes).Then<Answer>(outcome => JarAnswer.Changed(session.Workbench, outcome)));
    }
}
