using System.CommandLine;
using JarLabel.Bench;
using JarLabel.Bench.Keeping;
using JarLabel.Bench.Labels;
using JarLabel.Bench.Recording;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Jars;

namespace JarLabel.Cli.Commands;

/// <summary><c>jar</c>: one jar, its recipe, state and history.</summary>
internal static class JarCommand
{
    private static readonly Argument<string> Jar = JarArgument.One();

    internal static Command Create(Runner runner) => runner.Runs(new Command("jar", "One jar: recipe, state, history.") { Jar }, Run);

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var number = typed.Needed(Jar, JarNumber.Read);
        return typed.Then(() => LedgerDesk.Jar(session.Workbench, number).Then<Answer>(history =>
            JarAnswer.Shown(session.Workbench, new BenchOutcome(history, JarWords.Hazards(session.Workbench, history.Jar), null, MovedUseBy.Cautions(history)))));
    }
}
