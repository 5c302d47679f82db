using System.CommandLine;
using JarLabel.Bench.Changing;
using JarLabel.Cli.Answers;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Jars;
using JarLabel.Core.Supplies;

namespace JarLabel.Cli.Commands;

/// <summary><c>thin</c>: says what alcohol to add for a weaker cut, records it, writes the new label.</summary>
internal static class ThinCommand
{
    private static readonly Argument<string> Jar = JarArgument.One();
    private static readonly ChangedJarOptions Change = new();
    private static readonly Option<string> Solvent = new("--solvent") { Description = "What to add; else the alcohol that most of it is.", HelpName = "id" };

    private static readonly Option<string> Bottle = SupplyOptions.Bottle();

    internal static Command Create(Runner runner)
    {
        var command = new Command("thin", "Thin a jar to a weaker cut: says what to add, records it, writes the new label.") { Jar, Solvent, Bottle };
        Change.AddTo(command);
        return runner.Runs(command, Run);
    }

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var request = new ThinRequest(
            typed.Needed(Jar, JarNumber.Read),
            Change.To(typed, "1"),
            typed.Fact(Solvent, session.Solvent),
            Change.Temperature(typed),
            Change.Container(typed),
            Change.Label(typed))
        {
            Bottle = typed.Value(Bottle, SupplyNumber.ReadBottle),
        };
        return typed.Then(() => ThinJar.Do(session.Workbench, request).Then<Answer>(outcome => JarAnswer.Changed(session, outcome)));
    }
}
