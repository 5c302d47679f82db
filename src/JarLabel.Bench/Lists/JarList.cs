using JarLabel.Bench.Labels.Many;
using JarLabel.Bench.Typing;
using JarLabel.Core;
using JarLabel.Core.Jars;

namespace JarLabel.Bench.Lists;

/// <summary>A list of jars on record that want labels: columns <c>jar</c>, and <c>copies</c> where it is not one. A jar in several rows gets
/// the copies of all of them.</summary>
public static class JarList
{
    /// <summary>Most labels of one jar.</summary>
    public const int MostCopies = 1000;

    /// <summary>Name of the column that says how many labels.</summary>
    internal const string Copies = "copies";

    private const string Jar = "jar";

    /// <summary>The jars, or every problem of every row with its line.</summary>
    public static Result<IReadOnlyList<JarWish>> Read(string file) => ListFile.Read(file, [Jar, Copies], [Jar]).Then(rows =>
    {
        var wishes = rows.Select(row => new JarWish(row.Needed(Jar, "142 or 150..160", JarSpan.Read), row.Value(Copies, Words.WholeNumber(1, MostCopies)), $"{row.Where}, {Jar}") { AddsUp = true }).ToArray();
        Problem[] problems = [.. rows.SelectMany(row => row.Problems)];
        return problems.Length > 0 ? Result<IReadOnlyList<JarWish>>.Failed(problems) : Result<IReadOnlyList<JarWish>>.Of(wishes);
    });
}
