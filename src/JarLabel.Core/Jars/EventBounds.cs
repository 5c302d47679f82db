using JarLabel.Core.Text;

namespace JarLabel.Core.Jars;

/// <summary>Holds what an event says against what can be typed, or follows from what can be typed. What lies beyond was never recorded by this
/// program, and taken in it would break what reads it for good.</summary>
public sealed class EventBounds(string where)
{
    /// <summary>Dates outside these years are slips: no flakes are older, and no shop plans so far ahead.</summary>
    public const int FirstYear = 1900, LastYear = 2199;

    /// <summary>The most that one jar, bag or bottle holds of anything, in grams or millilitres: a thousand times what can be typed at once, because
    /// thinning makes more of it.</summary>
    public const double MostAmount = 1e9;

    /// <summary>The most parts that one liquid has.</summary>
    public const int MostParts = 1000;

    /// <summary>The most places of a sheet, and the most sheets, labels and tests that are counted.</summary>
    public const int MostCounted = 1_000_000;

    /// <summary>The longest ids and names of shelves; shorter where they are typed.</summary>
    public const int LongestName = 200;

    /// <summary>The longest file names and codes.</summary>
    internal const int LongestFile = 5000;

    /// <summary>A use-by lies at most so many years behind its mixing.</summary>
    private const int LongestKept = 2;

    private readonly List<Problem> problems = [];

    /// <summary>Everything that lies beyond.</summary>
    public IReadOnlyList<Problem> Problems => problems;

    internal void Moment(string member, DateTime at) => Demand(
        at.Year is >= FirstYear and <= LastYear && at.Kind == DateTimeKind.Unspecified, member, at.ToString("O", CultureInfo.InvariantCulture), $"local time from {FirstYear} to {LastYear} is");

    internal void Day(string member, DateOnly day) => Demand(
        day.Year is >= FirstYear and <= LastYear + LongestKept, member, day.ToString("O", CultureInfo.InvariantCulture), $"a day from {FirstYear} to {LastYear + LongestKept} is");

    internal void Amount(string member, double value, double most = MostAmount) => Demand(
        value > 0 && value <= most, member, value.ToString("R", CultureInfo.InvariantCulture), string.Create(CultureInfo.InvariantCulture, $"more than 0 and at most {most} is"));

    internal void Number(string member, double value, double least, double most) => Demand(
        value >= least && value <= most, member, value.ToString("R", CultureInfo.InvariantCulture), string.Create(CultureInfo.InvariantCulture, $"{least} to {most} is"));

    /// <summary>One line of text as it is typed; null where it may be left out.</summary>
    internal void Text(string member, string? text, int longest)
    {
        if (text is not null && !PlainText.Read(text, longest, member).TryGet(out _, out var faults))
        {
            problems.Add(JarProblems.NeverRecorded(member, text, faults[0].Message, where));
        }
    }

    /// <summary>A file's name or a code's text, which may hold anything but what ends a text.</summary>
    internal void Written(string member, string text) =>
        Demand(text.Length is > 0 and <= LongestFile && !text.Contains('\0'), member, text, $"1 to {LongestFile} characters are");

    internal void Word(string member, string word, IEnumerable<string> known) => Demand(known.Contains(word), member, word, $"one of {string.Join(", ", known)} is");

    internal void Demand(bool holds, string member, string read, string wanted)
    {
        if (!holds)
        {
            problems.Add(JarProblems.NeverRecorded(member, read, $"only {wanted} ever recorded.", where));
        }
    }
}
