namespace JarLabel.Core.Jars;

/// <summary>One jar, or a run of jars by their numbers: <c>142</c>, <c>142-5</c>, <c>150..160</c>. Two dots, because behind a hyphen stands a
/// check digit.</summary>
/// <param name="First">The lowest number.</param>
/// <param name="Last">The highest number; the same for one jar.</param>
public readonly record struct JarSpan(JarNumber First, JarNumber Last)
{
    /// <summary>The longest run that is taken at once.</summary>
    public const int Longest = 100_000;

    private const string Dots = "..";

    /// <summary>True for a single jar, which must be there; of a run, those that are on the shelf are meant.</summary>
    public bool IsOne => First == Last;

    /// <summary>Reads one jar or a run.</summary>
    public static Result<JarSpan> Read(string text, string where)
    {
        var ends = text.Split(Dots, StringSplitOptions.TrimEntries);
        return ends.Length switch
        {
            1 when LooksLikeARun(text) => JarProblems.HyphenForARun(text, where),
            1 => JarNumber.Read(text, where).Then<JarSpan>(one => new JarSpan(one, one)),
            2 => JarNumber.Read(ends[0], where).Then(first => JarNumber.Read(ends[1], where).Then(last => Between(first, last, text, where))),
            _ => JarProblems.NotARun(text, where),
        };
    }

    /// <summary>True when the jar is the one meant or one of the run.</summary>
    public bool Holds(int number) => number >= First.Value && number <= Last.Value;

    // A check digit is one digit; two or more behind the hyphen are another jar.
    private static bool LooksLikeARun(string text) =>
        text.Split('-', StringSplitOptions.TrimEntries) is [{ Length: > 0 } first, { Length: > 1 } last] && first.All(char.IsAsciiDigit) && last.All(char.IsAsciiDigit);

    private static Result<JarSpan> Between(JarNumber first, JarNumber last, string text, string where) =>
        last < first || last.Value - first.Value >= Longest ? JarProblems.NotARun(text, where) : new JarSpan(first, last);
}
