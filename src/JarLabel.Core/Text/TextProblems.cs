using System.Globalization;
using System.Text;

namespace JarLabel.Core.Text;

/// <summary>What can be wrong with a name, a job or a note.</summary>
internal static class TextProblems
{
    internal static Problem Empty(string where) => new("JL191", "Read an empty text; write something, or leave the option out.", where);

    internal static Problem Invisible(string read, Rune hidden, string where) => new(
        "JL192",
        string.Create(CultureInfo.InvariantCulture, $"Read {Quoted.Of(read)}, which holds a character that cannot be seen or printed (U+{hidden.Value:X4}). Letters, digits, spaces and punctuation are allowed, for example \"viola top, second coat\"."),
        where);

    internal static Problem TooLong(string read, int length, int longest, string where) => new(
        "JL193",
        string.Create(CultureInfo.InvariantCulture, $"Read a text of {length} characters, {Quoted.Of(read)}; at most {longest} are allowed here. Put the rest into a note."),
        where);
}
