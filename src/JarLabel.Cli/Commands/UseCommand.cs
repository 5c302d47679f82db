using System.CommandLine;
using JarLabel.Bench.Changing;
using JarLabel.Cli.Answers;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Jars;

namespace JarLabel.Cli.Commands;

/// <summary><c>use</c>: takes liquid out of a jar for a job.</summary>
internal static class UseCommand
{
    private static readonly Argument<string> Jar = JarArgument.One();
    private static readonly Argument<string> Amount = new("VOLUME") { Description = "How much: \"100 mL\", or all." };
    private static readonly Option<string> Job = new("--job") { Description = "What it goes to: \"viola top\".", HelpName = "text" };

    internal static Command Create(Runner runner) => runner.Runs(new Command("use", "Take liquid out of a jar for a job.") { Jar, Amount, Job }, Run);

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var number = typed.Needed(Jar, JarNumber.Read);
        var amount = typed.Needed(Amount, TakenText.Read);
        var job = typed.Fact(Job, Words.PrintedUpTo(120));
        return typed.Then(() => UseJar.Do(session.Workbench, number, amount.Volume, job).Then<Answer>(outcome => JarAnswer.Changed(session, outcome)));
    }
}
