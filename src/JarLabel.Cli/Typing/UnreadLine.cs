using System.CommandLine.Parsing;
using JarLabel.Core.Catalog;

namespace JarLabel.Cli.Typing;

/// <summary>What is wrong with a line that cannot be read, with what was probably meant and where all that is allowed stands.</summary>
internal static class UnreadLine
{
    /// <summary>Every fault; none where the line can be read.</summary>
    internal static IReadOnlyList<Problem> Problems(ParseResult line)
    {
        var commands = Path(line.CommandResult.Command).ToArray();
        var verb = Verb(commands[0]);
        var help = $"{(verb.Length == 0 ? "jarlabel" : $"jarlabel {verb}")} --help";
        var astray = Astray(line);
        if (!Helps(line) && ForgottenQuotes.In(line, astray) is var (value, meant))
        {
            return [TypingProblems.ForgottenQuotes(value, meant)];
        }

        // A word that nobody knows is the fault; what is then missing too only follows from it.
        return Unknown(line, astray) is { Count: > 0 } unknown ? [.. unknown.Select(word => TypingProblems.Syntax(word, Meant(word, commands), help))]
            : line.Errors.Count == 0 ? []
            : Missing(line, verb, commands[0]) is { } missing ? [missing]
            : [.. line.Errors.Select(error => TypingProblems.Syntax(error.Message, help))];
    }

    private static bool Helps(ParseResult line) => line.Errors.Count == 0 && line.Tokens.Any(token => token.Value is "--help" or "-h" or "/h" or "-?" or "/?");

    /// <summary>The words that nobody asked for; an option that nobody knows is none that may stand alone.</summary>
    private static IReadOnlyList<string> Astray(ParseResult line) =>
    [
        .. line.UnmatchedTokens,
        .. line.CommandResult.Command.Arguments.Where(MayStandAlone).SelectMany(one => line.GetResult(one)?.Tokens ?? []).Select(token => token.Value).Where(IsOption),
    ];

    /// <summary>True for an argument that may stay out.</summary>
    internal static bool MayStandAlone(Argument one) => one.Arity is { MinimumNumberOfValues: 0, MaximumNumberOfValues: 1 };

    /// <summary>True for a word that is written like an option.</summary>
    internal static bool IsOption(string word) => word.StartsWith('-') && word.Length > 1;

    /// <summary>The words that nobody knows; not what stands behind an option that nobody knows, which is its value.</summary>
    private static List<string> Unknown(ParseResult line, IReadOnlyList<string> astray)
    {
        var (unmatched, unknown, behind) = (astray.ToList(), new List<string>(), false);
        foreach (var word in line.Tokens.Select(token => token.Value))
        {
            var option = IsOption(word);
            if (!unmatched.Remove(word))
            {
                behind = false;
                continue;
            }

            if (option || !behind)
            {
                unknown.Add(word);
            }

            behind = option;
        }

        return unknown;
    }

    /// <summary>What must stand on the line and does not, with a whole line for an example.</summary>
    private static Problem? Missing(ParseResult line, string verb, Command command)
    {
        if (StepTable.Find(verb) is not { } step)
        {
            return null;
        }

        if (line.Errors.Select(error => error.SymbolResult).OfType<OptionResult>().FirstOrDefault()?.Option is { } option)
        {
            return step.Fields.FirstOrDefault(field => CommandLine.Option(step, field) == option.Name) is { } empty ? TypingProblems.NoValue(option.Name, empty.Example) : null;
        }

        string[] missing = [.. step.Fields.Where(field => field.IsNeeded && !Stands(line, command, step, field)).Select(field => field.IsArgument ? field.Name.ToUpperInvariant() : CommandLine.Option(step, field))];
        return missing.Length == 0 || !line.Errors.Any(error => error.SymbolResult is ArgumentResult) ? null
            : TypingProblems.NotOnTheLine(missing, new LineSpelling(command).Write(new Remedy(step.Verb, step.Example)));
    }

    private static bool Stands(ParseResult line, Command command, Step step, Field field) => Texts(line, command, step, field).Any();

    /// <summary>What stands on the line for a field, behind its option or without.</summary>
    internal static IEnumerable<string> Texts(ParseResult line, Command command, Step step, Field field) =>
        command.Arguments.Where(one => one.Name.Equals(field.Name, StringComparison.OrdinalIgnoreCase)).SelectMany(one => line.GetResult(one)?.Tokens ?? [])
            .Concat(command.Options.Where(one => one.Name == CommandLine.Option(step, field)).SelectMany(one => line.GetResult(one)?.Tokens ?? []))
            .Select(token => token.Value);

    /// <summary>The words that name a command, without the program: <c>bag add</c>.</summary>
    internal static string Verb(Command command) => Above(command) is not { } above ? "" : Verb(above) is { Length: > 0 } first ? $"{first} {command.Name}" : command.Name;

    /// <summary>A command and those it stands under, to the root.</summary>
    private static IEnumerable<Command> Path(Command command)
    {
        for (var one = command; one is not null; one = Above(one))
        {
            yield return one;
        }
    }

    /// <summary>The command that it stands under; null for the root.</summary>
    private static Command? Above(Command command) => command.Parents.OfType<Command>().FirstOrDefault();

    private static string? Meant(string unknown, Command[] commands)
    {
        string[] known = [.. unknown.StartsWith('-') ? commands.SelectMany(c => c.Options).Select(o => o.Name) : commands[0].Subcommands.Select(c => c.Name)];
        return MeantOptions.Of(unknown, known) ?? Nearest.To(unknown, known);
    }
}
