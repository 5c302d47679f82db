namespace JarLabel.Cli.Typing;

/// <summary>What was typed, read option by option. A fault is noted and the reading goes on, so that all faults are told at once.</summary>
internal sealed class ParsedLine(ParseResult parsed)
{
    private readonly List<Problem> problems = [];

    /// <summary>The line as it was parsed.</summary>
    internal ParseResult Parsed => parsed;

    /// <summary>Everything that was wrong so far.</summary>
    internal IReadOnlyList<Problem> Problems => problems;

    /// <summary>The option's text, or null when it was not given.</summary>
    internal string? Text(Option<string> option) => parsed.GetValue(option);

    /// <summary>True when a switch was given.</summary>
    internal bool Switch(Option<bool> option) => parsed.GetValue(option);

    /// <summary>The option's value, or null when it was not given or could not be read.</summary>
    internal T? Value<T>(Option<string> option, Func<string, string, Result<T>> read)
        where T : struct => Text(option) is { } text && Take(read(text, option.Name), out var value) ? value : null;

    /// <summary>The option's value, or null when it was not given or could not be read.</summary>
    internal T? Fact<T>(Option<string> option, Func<string, string, Result<T>> read)
        where T : class => Text(option) is { } text && Take(read(text, option.Name), out var value) ? value : null;

    /// <summary>The argument's value.</summary>
    internal T Needed<T>(Argument<string> argument, Func<string, string, Result<T>> read)
        where T : notnull => Take(read(parsed.GetValue(argument) ?? "", argument.Name), out var value) ? value! : default!;

    /// <summary>The file that the argument names.</summary>
    internal Result<string> File(Argument<string> argument) => FileText.Read(parsed.GetValue(argument) ?? "", argument.Name);

    /// <summary>Takes a result's value, or notes its problems.</summary>
    internal bool Take<T>(Result<T> result, out T? value)
        where T : notnull
    {
        var ok = result.TryGet(out value, out var faults);
        foreach (var fault in faults)
        {
            Refuse(fault);
        }

        return ok;
    }

    /// <summary>Notes a fault; once, though what was typed may be read at more than one place.</summary>
    internal void Refuse(Problem problem)
    {
        if (!problems.Contains(problem))
        {
            problems.Add(problem);
        }
    }

    /// <summary>Goes on when everything could be read; otherwise all the problems.</summary>
    internal Result<T> Then<T>(Func<Result<T>> next)
        where T : notnull => problems.Count == 0 ? next() : Result<T>.Failed(problems);
}
