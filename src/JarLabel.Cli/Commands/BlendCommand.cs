using System.CommandLine;
using JarLabel.Bench.Changing;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Jars;
using JarLabel.Core.Quantities;
using UnitsNet;

namespace JarLabel.Cli.Commands;

/// <summary><c>blend</c>: pours jars, or parts of them, together into a new one.</summary>
internal static class BlendCommand
{
    private static readonly Argument<string[]> Jars = new("JAR") { Description = "Two or more jars: 3 7-2, or a part of one as \"3=200 mL\".", Arity = ArgumentArity.OneOrMore };
    private static readonly NewJarOptions New = new();

    internal static Command Create(Runner runner)
    {
        var command = new Command("blend", "Pour jars together into a new one; it takes the shortest keeping and every hazard of its parts.") { Jars };
        New.AddTo(command);
        return runner.Runs(command, Run);
    }

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var parts = new List<(JarNumber, Volume?)>();
        foreach (var text in typed.Texts(Jars))
        {
            if (typed.Take(ReadPart(text), out var part))
            {
                parts.Add(part);
            }
        }

        var into = New.Read(typed);
        return typed.Then(() => BlendJars.Do(session.Workbench, parts, into).Then<Answer>(outcome => JarAnswer.Changed(session.Workbench, outcome)));
    }

    private static Result<(JarNumber, Volume?)> ReadPart(string text) => text.Split('=', 2) is [var jar, var amount]
        ? JarNumber.Read(jar, Jars.Name).Then(number => VolumeText.Read(amount, Jars.Name).Then<(JarNumber, Volume?)>(volume => (number, volume)))
        : JarNumber.Read(text, Jars.Name).Then<(JarNumber, Volume?)>(number => (number, null));
}
