using System.CommandLine;
using System.CommandLine.Parsing;
using JarLabel.Core;

namespace JarLabel.Cli.Typing;

/// <summary>What was typed, read option by option. A fault is noted and the reading goes on, so that all faults are told at once.</summary>
internal sealed class Typed(ParseResult parsed)
{
    private readonly List<Problem> problems = [];

    /// <summary>The line as it was parsed.</summary>
    internal ParseResult Parsed => parsed;

    /// <summary>Everything that was wrong so far.</summary>
    internal IReadOnlyList<Problem> Problems => problems;

    /// <summary>The names of the options that were typed.</summary>
    internal IEnumerable<string> Given
    {
        get
        {
            foreach (var typed in parsed.CommandResult.Children)
            {
                if (typed is OptionResult { Implicit: false } option)
                {
                    yield return option.Option.Name;
                }
            }
        }
    }

    /// <summary>The option's text, or null when it was not given.</summary>
    internal string? Text(Option<string> option) => parsed.GetValue(option);

    /// <summary>The argument's text, or null when it was left out.</summary>
    internal string? Text(Argument<string?> argument) => parsed.GetValue(argument);

    /// <summary>True when a switch was given.</summary>
    internal bool Switch(Option<bool> option) => parsed.GetValue(option);

    /// <summary>The argument's texts.</summary>
    internal IReadOnlyList<string> Texts(Argument<string[]> argument) => parsed.GetValue(argument) ?? [];

    /// <summary>The option's texts, one for each time it was given.</summary>
    internal IReadOnlyList<string> Texts(Option<string[]> option) => parsed.GetValue(option) ?? [];

    /// <summary>The option's value, or null when it was not given or could not be read.</summary>
    internal T? Value<T>(Option<string> option, Func<string, string, Result<T>> read)
        where T : struct => Text(option) is { } text && Take(read(text, option.Name), out var value) ? value : null;

    /// <summary>The option's value, or null when it was not given or could not be read.</summary>
    internal T? Fact<T>(Option<string> option, Func<string, string, Result<T>> read)
        where T : class => Text(option) is { } text && Take(read(text, option.Name), out var value) ? value : null;

    /// <summary>The option's value, which must be given.</summary>
    internal T Needed<T>(Option<string> option, string example, Func<string, string, Result<T>> read)
        where T : notnull
    {
        if (Text(option) is not { } text)
        {
            Refuse(TypingProblems.Missing(option.Name, example));
            return default!;
        }

        return Take(read(text, option.Name), out var value) ? value! : default!;
    }

    /// <summary>The argument's value.</summary>
    internal T Needed<T>(Argument<string> argument, Func<string, string, Result<T>> read)
        where T : notnull => Take(read(parsed.GetValue(argument) ?? "", argument.Name), out var value) ? value! : default!;

    /// <summary>The file that the argument names.</summary>
    internal Result<string> File(Argument<string> argument) =>
        parsed.GetValue(argument) is { } file && !string.IsNullOrWhiteSpace(file) ? Full(file, argument.Name).Then<string>(_ => file) : TypingProblems.NotAFile(argument.Name);

    /// <summary>The full path of the file that the option names, or null when it was not given or names none.</summary>
    internal string? File(Option<string> option)
    {
        if (Text(option) is { } named && string.IsNullOrWhiteSpace(named))
        {
            Refuse(TypingProblems.NotAFile(option.Name));
            return null;
        }

        return Text(option) is { } file && Take(Full(file, option.Name), out var full) ? full : null;
    }

    /// <summary>The full path of a file as typed; a problem where none was named, or there is no folder any more that it could be in.</summary>
    internal static Result<string> Full(string file, string where)
    {
        try
        {
            return string.IsNullOrWhiteSpace(file) ? TypingProblems.NotAFile(where) : Path.GetFullPath(file);
        }
        catch (IOException)
        {
            return TypingProblems.NoCurrentFolder(file);
        }
    }

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
