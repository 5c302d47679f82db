using System.CommandLine;
using JarLabel.Bench.Labels.Many;
using JarLabel.Bench.Lists;
using JarLabel.Cli.Typing;
using JarLabel.Core.Jars;

namespace JarLabel.Cli.Commands;

/// <summary>The argument and options that say whose labels are wanted, and how many of each.</summary>
internal sealed class JarsOptions
{
    private readonly Argument<string[]> jars = new("JAR") { Description = "The jars: 142, 142-5, or a run of them, 150..160.", Arity = ArgumentArity.ZeroOrMore };
    private readonly Option<string> list = new("--list") { Description = "Jars from a CSV file: columns jar, and copies where wanted.", HelpName = "file.csv" };
    private readonly Option<string> shelf = new("--shelf") { Description = "All jars of this shelf.", HelpName = "name" };
    private readonly Option<bool> all = new("--all") { Description = "All jars on all shelves." };
    private readonly Option<string> copies = CopiesOption();

    internal void AddTo(Command command)
    {
        command.Add(list);
        command.Add(jars);
        command.Add(shelf);
        command.Add(all);
        command.Add(copies);
    }

    internal bool Given(Typed typed) => typed.Texts(jars).Count > 0 || typed.Text(list) is not null || typed.Text(shelf) is not null || typed.Switch(all);

    /// <summary>How many of each label.</summary>
    internal static int ReadCopies(Option<string> option, Typed typed) => typed.Value(option, Words.WholeNumber(1, JarList.MostCopies)) ?? 1;

    /// <summary>The option that says how many of each label.</summary>
    internal static Option<string> CopiesOption() => new("--copies") { Description = "How many of each label, one after the other.", HelpName = "number" };

    internal bool GivenCopies(Typed typed) => typed.Text(copies) is not null;

    internal int Copies(Typed typed) => ReadCopies(copies, typed);

    internal JarsWanted Read(Typed typed)
    {
        var named = new List<JarWish>();
        foreach (var text in typed.Texts(jars))
        {
            if (typed.Take(JarSpan.Read(text, "JAR"), out var span))
            {
                named.Add(new JarWish(span));
            }
        }

        if (typed.Text(list) is { } file && typed.Take(JarList.Read(file), out var listed))
        {
            named.AddRange(listed!);
        }

        return new JarsWanted(named, typed.Text(shelf), typed.Switch(all));
    }
}
