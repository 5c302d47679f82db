using JarLabel.Core.Catalog;

namespace JarLabel.Cli.Typing;

/// <summary>What is wrong with a line that cannot be read, with what was probably meant and where all that is allowed stands.</summary>
internal static class UnreadLine
{
    internal static IReadOnlyList<Problem> Problems(ParseResult line)
    {
        var commands = Path(line.CommandResult.Command).ToArray();
        var called = string.Join(' ', commands.Reverse().Skip(1).Select(c => c.Name).Prepend("jarlabel"));
        var told = line.Errors.Select(error => (error.Message, Unknown: line.UnmatchedTokens.FirstOrDefault(token => error.Message.Contains($"'{token}'", StringComparison.Ordinal)))).ToArray();

        // A word that nobody knows is the fault; what is then missing too only follows from it.
        return [.. told.Where(t => t.Unknown is not null || told.All(o => o.Unknown is null)).Select(t => TypingProblems.Syntax(t.Message, Meant(t.Unknown, commands), $"{called} --help"))];
    }

    /// <summary>A command and those it stands under, to the root.</summary>
    private static IEnumerable<Command> Path(Command command) =>
        command.Parents.OfType<Command>().FirstOrDefault() is { } above ? Path(above).Prepend(command) : [command];

    private static string? Meant(string? unknown, Command[] commands) => unknown is null
        ? null
        : Nearest.To(unknown, unknown.StartsWith('-') ? commands.SelectMany(c => c.Options).Select(o => o.Name) : commands[0].Subcommands.Select(c => c.Name));
}
