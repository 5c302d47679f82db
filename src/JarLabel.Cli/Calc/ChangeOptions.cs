using System.CommandLine;
using JarLabel.Cli.Typing;
using JarLabel.Core.Quantities;
using UnitsNet;

namespace JarLabel.Cli.Calc;

/// <summary>From one cut to another: the options of <c>calc thin</c> and <c>calc thicken</c>.</summary>
internal sealed class ChangeOptions
{
    private readonly Option<string> from = new("--from") { Description = "The cut it is now.", HelpName = "cut" };
    private readonly Option<string> to = new("--to") { Description = "The cut wanted.", HelpName = "cut" };
    private readonly Option<string> of = new("--of") { Description = "How much liquid there is.", HelpName = "volume" };

    internal Command AddTo(Command command)
    {
        command.Add(from);
        command.Add(to);
        command.Add(of);
        return command;
    }

    internal (PoundCut From, PoundCut To, Volume Of) Read(Typed typed) => (
        typed.Needed(from, "3", CutText.Read),
        typed.Needed(to, "1.5", CutText.Read),
        typed.Needed(of, "\"300 mL\"", VolumeText.Read));
}
