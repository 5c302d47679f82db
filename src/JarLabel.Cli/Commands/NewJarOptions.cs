using System.CommandLine;
using JarLabel.Bench.Changing;
using JarLabel.Cli.Typing;

namespace JarLabel.Cli.Commands;

/// <summary>The options for a jar that something is poured into.</summary>
internal sealed class NewJarOptions
{
    private readonly ContainerOptions container = new();
    private readonly Option<string> shelf = new("--shelf") { Description = "The shelf it goes to; else the one it came from.", HelpName = "name" };
    private readonly Option<string> by = new("--by") { Description = "Who pours.", HelpName = "name" };
    private readonly Option<string> job = new("--job") { Description = "What it is for: \"viola top\".", HelpName = "text" };
    private readonly Option<string> note = new("--note") { Description = "Anything else.", HelpName = "text" };
    private readonly NewLabelOptions label = new();

    internal void AddTo(Command command)
    {
        container.AddTo(command);
        foreach (var option in (Option[])[shelf, by, job, note])
        {
            command.Add(option);
        }

        label.AddTo(command);
    }

    internal NewJar Read(Typed typed) => new(
        container.Read(typed),
        typed.Text(shelf),
        typed.Fact(by, Words.PrintedUpTo(60)),
        typed.Fact(job, Words.PrintedUpTo(120)),
        typed.Fact(note, Words.PrintedUpTo(500)),
        label.Read(typed));
}
