using System.CommandLine;
using JarLabel.Bench.Changing;
using JarLabel.Cli.Answers;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Jars;

namespace JarLabel.Cli.Commands;

/// <summary><c>discard</c>: takes a jar off the shelf for good.</summary>
internal static class DiscardCommand
{
    private static readonly Argument<string> Jar = JarArgument.One();
    private static readonly Option<string> Why = new("--why") { Description = "Why: \"stays tacky\".", HelpName = "text" };

    internal static Command Create(Runner runner) => runner.Runs(new Command("discard", "Take a jar off the shelf for good.") { Jar, Why }, Run);

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var number = typed.Needed(Jar, JarNumber.Read);
        var why = typed.Fact(Why, Words.PrintedUpTo(120));
        return typed.Then(() => DiscardJar.Do(session.Workbench, number, why).Then<Answer>(outcome => JarAnswer.Changed(session, outcome)));
    }
}
