using System.CommandLine;
using JarLabel.Bench.Changing;
using JarLabel.Cli.Answers;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Jars;
using UnitsNet;

namespace JarLabel.Cli.Commands;

/// <summary><c>decant</c>: pours a jar off into new ones.</summary>
internal static class DecantCommand
{
    private static readonly Argument<string> Jar = JarArgument.One();
    private static readonly Option<string[]> Into = new("--into") { Description = "How much into each new jar: \"200 mL,200 mL\"; \"all\" for what is left.", HelpName = "volumes" };
    private static readonly NewJarOptions New = new();

    internal static Command Create(Runner runner)
    {
        var command = new Command("decant", "Pour a jar off into new ones, each with its own number and label.") { Jar, Into };
        New.AddTo(command);
        return runner.Runs(command, Run);
    }

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var number = typed.Needed(Jar, JarNumber.Read);
        var amounts = new List<Volume?>();
        foreach (var text in typed.Texts(Into))
        {
            if (typed.Take(TakenText.ReadList(text, Into.Name), out var read))
            {
                amounts.AddRange(read!.Select(amount => amount.Volume));
            }
        }

        var into = New.Read(typed);
        return typed.Then(() => DecantJar.Do(session.Workbench, number, amounts, into).Then<Answer>(outcome => JarAnswer.Decanted(session, outcome)));
    }
}
