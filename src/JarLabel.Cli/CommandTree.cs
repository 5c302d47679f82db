using System.CommandLine.Help;
using JarLabel.Cli.Commands;

namespace JarLabel.Cli;

/// <summary>Every command there is.</summary>
internal static class CommandTree
{
    /// <summary>What only the command line does, beside the declared steps.</summary>
    private static readonly (string Name, Func<Runner, Command> Create)[] Own =
    [
        ("help", HelpCommand.Create),
        ("serve", ServeCommand.Create),
        ("publish", PublishCommand.Create),
    ];

    /// <summary>The commands as a typed line needs them: only the one that it names, where it names one, because making all of
    /// them takes a good part of the time of a short command.</summary>
    internal static Command Create(Runner runner, IReadOnlyList<string> line)
    {
        var root = Verb(line) is { } verb && Find(verb, runner) is { } command ? Only(command, line) : All(runner);
        SharedOptions.AddTo(root);
        return root;
    }

    /// <summary>The first word that is no option every command has, nor the value of one: <c>--shop folder shelf</c>.</summary>
    private static string? Verb(IReadOnlyList<string> line)
    {
        for (var place = 0; place < line.Count; place++)
        {
            if (SharedOptions.All.FirstOrDefault(option => option.Name == line[place]) is not { } shared)
            {
                return line[place];
            }

            place += shared.ValueType == typeof(bool) ? 0 : 1;
        }

        return null;
    }

    /// <summary>The names of what only the command line does.</summary>
    internal static IEnumerable<string> OwnNames => Own.Select(own => own.Name);

    /// <summary>Shows the help of a command; null where there is no such command.</summary>
    internal static Func<int>? HelpOf(IReadOnlyList<string> command, Runner runner)
    {
        if (command.Count == 0 || Find(command[0], runner) is not { } found || command.Skip(1).Any(word => found.Subcommands.All(sub => sub.Name != word)))
        {
            return null;
        }

        string[] line = [.. command, "--help"];
        var parsed = Create(runner, line).Parse(line);
        return () => parsed.Invoke(new() { EnableDefaultExceptionHandler = false, Output = runner.Terminal.Result, Error = runner.Terminal.Errors });
    }

    /// <summary>The command with this name; null for none.</summary>
    private static Command? Find(string name, Runner runner) =>
        StepTable.About(name) is { } about ? Group(name, about, runner)
        : StepTable.Find(name) is { } step ? StepCommand.Of(step, runner)
        : Array.Find(Own, own => own.Name == name).Create?.Invoke(runner);

    private static Command Group(string name, string about, Runner runner)
    {
        var group = new Command(name, about);
        foreach (var step in StepTable.Under(name))
        {
            group.Add(StepCommand.Of(step, runner));
        }

        return group;
    }

    private static Command Only(Command command, IReadOnlyList<string> line)
    {
        var root = new Command("jarlabel") { command };
        if (line.Any(word => word is "--help" or "-h" or "/h" or "-?" or "/?"))
        {
            root.Add(new HelpOption());
        }

        return root;
    }

    private static RootCommand All(Runner runner)
    {
        var root = new RootCommand("Mix shellac from flakes and alcohol, keep the ledger of every jar, print its label.");
        foreach (var name in StepTable.Words.Concat(Own.Select(own => own.Name)))
        {
            root.Add(Find(name, runner)!);
        }

        return root;
    }
}
