namespace JarLabel.Cli.Typing;

/// <summary>Names as they are typed: an option with its dashes, an argument in capitals, a step as the whole command.</summary>
/// <param name="command">The command that was typed.</param>
/// <param name="fields">Its options and arguments by the identities of what they hold; null where their names say it.</param>
internal sealed class LineSpelling(Command command, IReadOnlyDictionary<string, Symbol>? fields = null) : ISpelling
{
    /// <summary>Problems in words that can be typed.</summary>
    internal IReadOnlyList<Problem> Tell(IReadOnlyList<Problem> told) => [.. told.Select(one => one.In(this, Place))];

    /// <summary>What a command says, its problems in words that can be typed.</summary>
    internal Result<Answer> Of(Result<Answer> said) => said.TryGet(out var answer, out var faults) ? answer.As(Tell) : Result<Answer>.Failed(Tell(faults));

    /// <inheritdoc/>
    public string Write(InputName input) => CommandLine.Said(Known(input.Name) ?? CommandLine.Option(input.Name), input.Value);

    /// <inheritdoc/>
    public string Write(Remedy remedy) => CommandLine.Quoted.Write(remedy);

    /// <summary>Where a fault is: what can be typed is written so, all else as it is.</summary>
    private string Place(string name) => Known(name) ?? name;

    private string? Known(string name) => fields?.GetValueOrDefault(name)?.Name
        ?? command.Options.Concat(SharedOptions.All).FirstOrDefault(one => one.Name == CommandLine.Option(name))?.Name
        ?? command.Arguments.FirstOrDefault(one => string.Equals(one.Name, name, StringComparison.OrdinalIgnoreCase))?.Name;
}
