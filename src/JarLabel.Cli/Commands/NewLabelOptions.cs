using System.CommandLine;
using JarLabel.Bench.Labels;
using JarLabel.Cli.Typing;

namespace JarLabel.Cli.Commands;

/// <summary>The options for the label that comes with a step, unless none is wanted.</summary>
internal sealed class NewLabelOptions
{
    private readonly Option<bool> none = new("--no-label") { Description = "Record it, write no label." };

    /// <summary>Adds them; the last is how the command names the printer.</summary>
    internal void AddTo(Command command, Option<string>? to = null)
    {
        command.Add(none);
        LabelOptions.AddTo(command, to);
    }

    /// <summary>The label wanted; null for none.</summary>
    internal LabelChoice? Read(Typed typed)
    {
        var choice = LabelOptions.Read(typed);
        return typed.Switch(none) ? null : choice;
    }
}
