using System.CommandLine.Parsing;
using JarLabel.Core.Quantities;

namespace JarLabel.Cli.Typing;

/// <summary>A value of several words that was typed without quotation marks: the line as it was probably meant.</summary>
internal static class ForgottenQuotes
{
    /// <summary>The corrected line and its first value of several words; null where no word stands astray behind another.</summary>
    /// <param name="line">The line as it was parsed.</param>
    /// <param name="astray">The words that nobody asked for.</param>
    internal static (string Value, string Line)? In(ParseResult line, IReadOnlyList<string> astray)
    {
        var command = line.CommandResult.Command;
        if (command.Subcommands.Count > 0)
        {
            return null;
        }

        var (words, unmatched) = (new List<string> { "jarlabel" }, astray.ToList());
        var last = Kind.Other;
        foreach (var token in line.Tokens)
        {
            var word = token.Value;
            if (token.Type != TokenType.Argument || (UnreadLine.IsOption(word) && unmatched.Contains(word)))
            {
                words.Add(word);
                last = UnreadLine.IsOption(word) && (token.Type != TokenType.Option || TakesValue(command, word)) ? Kind.Option : Kind.Other;
                continue;
            }

            if (last is Kind.Value or Kind.Word && Strays(word, last) && Follows(words[^1], word))
            {
                words[^1] += " " + word;
                continue;
            }

            words.Add(word);
            last = last == Kind.Option ? Kind.Value : Kind.Word;
        }

        // As many words as were typed, and the name of the program: none of them was joined to another.
        return words.Count > line.Tokens.Count || !IsTaken(line, words) ? null : (words.First(word => word.Contains(' ', StringComparison.Ordinal)), string.Join(' ', words.Select(CommandLine.InQuotes)));

        // What nobody asked for; what an argument that may stay out took behind an option's value; a unit behind a part such as 1=200.
        bool Strays(string word, Kind behind) => unmatched.Remove(word)
            || (behind == Kind.Value && !IsPlace(word) && command.Arguments.Any(one => UnreadLine.MayStandAlone(one) && line.GetResult(one)?.Tokens.Any(took => took.Value == word) == true))
            || (words[^1].Contains('=', StringComparison.Ordinal) && char.IsAsciiDigit(words[^1][^1]) && AmountWords.GoesOn(word) && !AmountWords.Begins(word));
    }

    /// <summary>True where the corrected line can be read, and every value of several words by the field that it goes to.</summary>
    private static bool IsTaken(ParseResult line, IReadOnlyList<string> words)
    {
        var corrected = line.RootCommandResult.Command.Parse([.. words.Skip(1)]);
        if (corrected.Errors.Count > 0 || corrected.UnmatchedTokens.Count > 0)
        {
            return false;
        }

        var command = corrected.CommandResult.Command;
        return StepTable.Find(UnreadLine.Verb(command)) is not { } step
            || step.Fields.All(field => field.Takes is not { } takes || UnreadLine.Texts(corrected, command, step, field).All(text => !text.Contains(' ', StringComparison.Ordinal) || takes(text)));
    }

    /// <summary>True for a word that names a file: it is no second word of a value.</summary>
    private static bool IsPlace(string word) => word.AsSpan().IndexOfAny("/\\.") >= 0 || Path.Exists(word);

    /// <summary>Behind a number goes only what can belong to it; behind a word, any word.</summary>
    private static bool Follows(string value, string word) => !AmountWords.Begins(value) || AmountWords.GoesOn(word);

    private static bool TakesValue(Command command, string name) =>
        command.Options.Concat(SharedOptions.All).FirstOrDefault(one => one.Name == name || one.Aliases.Contains(name)) is { } option && option.ValueType != typeof(bool);

    /// <summary>What a word on the line was.</summary>
    private enum Kind
    {
        /// <summary>A command or a switch.</summary>
        Other,

        /// <summary>An option that takes a value.</summary>
        Option,

        /// <summary>The value of an option.</summary>
        Value,

        /// <summary>An argument.</summary>
        Word,
    }
}
