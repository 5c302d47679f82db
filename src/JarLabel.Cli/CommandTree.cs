using System.CommandLine;
using System.CommandLine.Help;
using JarLabel.Bench.Steps;
using JarLabel.Cli.Commands;

namespace JarLabel.Cli;

/// <summary>Every command there is.</summary>
internal static class CommandTree
{
    /// <summary>Under the name by which each is called.</summary>
    private static readonly (string Name, Func<Runner, Command> Create)[] Commands =
    [
        ("mix", runner => Declared("mix", runner)),
        ("thin", runner => Declared("thin", runner)),
        ("thicken", runner => Declared("thicken", runner)),
        ("blend", runner => Declared("blend", runner)),
        ("decant", runner => Declared("decant", runner)),
        ("use", runner => Declared("use", runner)),
        ("test", runner => Declared("test", runner)),
        ("move", runner => Declared("move", runner)),
        ("note", runner => Declared("note", runner)),
        ("discard", runner => Declared("discard", runner)),
        ("undo", runner => Declared("undo", runner)),
        ("jar", runner => Declared("jar", runner)),
        ("scan", runner => Declared("scan", runner)),
        ("shelf", runner => Declared("shelf", runner)),
        ("bag", runner => Group("bag", "The bags of flakes that batches draw from.", runner)),
        ("bottle", runner => Group("bottle", "The bottles and cans of alcohol that batches draw from.", runner)),
        ("can", runner => Group("can", "The shop's own cans of alcohol, as their safety data sheets state them.", runner)),
        ("keeping", runner => Declared("keeping", runner)),
        ("plan", runner => Declared("plan", runner)),
        ("label", runner => Declared("label", runner)),
        ("card", runner => Declared("card", runner)),
        ("notice", runner => Declared("notice", runner)),
        ("sheets", runner => Declared("sheets", runner)),
        ("sheet", runner => Group("sheet", "The sheets of label stock in use: their free places.", runner)),
        ("designs", runner => Declared("designs", runner)),
        ("calibrate", runner => Declared("calibrate", runner)),
        ("printers", runner => Declared("printers", runner)),
        ("check", CheckCommand.Create),
        ("serve", ServeCommand.Create),
        ("publish", PublishCommand.Create),
        ("shop", runner => Group("shop", "The shop folder and its settings.", runner)),
        ("export", runner => Declared("export", runner)),
        ("import", runner => Declared("import", runner)),
        ("backup", runner => Declared("backup", runner)),
        ("restore", runner => Declared("restore", runner)),
        ("verify", runner => Declared("verify", runner)),
        ("demo", runner => Declared("demo", runner)),
        ("calc", runner => Group("calc", "Sums without a jar.", runner)),
    ];

    /// <summary>The commands as a typed line needs them: only the one that it starts with, where it starts with one, because making all of
    /// them takes a good part of the time of a short command.</summary>
    internal static Command Create(Runner runner, IReadOnlyList<string> line)
    {
        var root = line.Count > 0 && Array.Find(Commands, c => c.Name == line[0]).Create is { } create
            ? Only(create(runner), line)
            : All(runner);
        SharedOptions.AddTo(root);
        return root;
    }

    private static Command Declared(string verb, Runner runner) => StepCommand.Of(StepTable.Find(verb)!, runner);

    /// <summary>The steps whose names begin with one word, as commands of that one.</summary>
    private static Command Group(string name, string help, Runner runner)
    {
        var group = new Command(name, help);
        foreach (var verb in StepTable.Verbs.Where(verb => verb.StartsWith(name + " ", StringComparison.Ordinal)))
        {
            group.Add(Declared(verb, runner));
        }

        return group;
    }

    private static Command Only(Command command, IReadOnlyList<string> line)
    {
        var root = new Command("jarlabel") { command };
        if (line.Any(word => word is "--help" or "-h" or "/h" or "-?" or "/?" || word.StartsWith('@')))
        {
            root.Add(new HelpOption());
        }

        return root;
    }

    private static RootCommand All(Runner runner)
    {
        var root = new RootCommand("Mix shellac from flakes and alcohol, keep the ledger of every jar, print its label.");
        foreach (var (_, create) in Commands)
        {
            root.Add(create(runner));
        }

        return root;
    }
}
