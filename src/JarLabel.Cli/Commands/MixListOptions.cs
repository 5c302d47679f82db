using System.CommandLine;
using JarLabel.Bench.Lists;
using JarLabel.Cli.Typing;
using JarLabel.Core;

namespace JarLabel.Cli.Commands;

/// <summary>The options of <c>mix</c> for a list of batches, and what it then does.</summary>
internal sealed class MixListOptions
{
    private readonly Option<string> list = new("--list") { Description = "Many batches from a CSV file, one row a jar; its columns are called like these options.", HelpName = "file.csv" };
    private readonly Option<string> copies = JarsOptions.CopiesOption();
    private readonly Option<string> file = new("--out") { Description = "The PDF to write with --list; else one in the shop's labels folder.", HelpName = "file" };

    internal void AddTo(Command command)
    {
        command.Add(list);
        command.Add(copies);
        command.Add(file);
        command.Add(SharedOptions.Force);
    }

    /// <summary>True for a list; without one, what only a list takes is refused.</summary>
    internal bool Given(Typed typed)
    {
        if (typed.Text(list) is not null)
        {
            return true;
        }

        foreach (var option in typed.Given)
        {
            if (option == copies.Name || option == file.Name)
            {
                typed.Refuse(TypingProblems.OnlyWithList(option));
            }
        }

        return false;
    }

    internal Result<Answer> Run(Typed typed, Session session, NewLabelOptions label)
    {
        var (choice, count) = (label.Read(typed), JarsOptions.ReadCopies(copies, typed));
        foreach (var option in typed.Given.Intersect(MixList.Columns.Select(column => "--" + column).Concat(["--bag", "--bottle"])).Except([copies.Name]))
        {
            typed.Refuse(TypingProblems.NotBesideList(option));
        }

        var target = typed.File(file);
        return typed.Then(() => Typed.Full(typed.Text(list)!, list.Name).Then(named => MixList.Do(session.Workbench, named, choice is null ? null : choice with { Copies = count }, target, session.Progress("labels")))
            .Then<Answer>(mixed => LabelsAnswer.Of(session.Workbench, mixed)));
    }
}
