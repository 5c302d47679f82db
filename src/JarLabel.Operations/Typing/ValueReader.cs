using JarLabel.Core.Text;

namespace JarLabel.Operations.Typing;

/// <summary>Readers for the small words of a command line: dates, choices, names, numbers.</summary>
public static class ValueReader
{
    private const int FirstYear = EventBounds.FirstYear, LastYear = EventBounds.LastYear;

    private static readonly Dictionary<string, RuleSet> RuleSets = new(StringComparer.OrdinalIgnoreCase)
    {
        ["osha"] = RuleSet.Osha,
        ["clp"] = RuleSet.Clp,
    };

    private static readonly Dictionary<string, bool> Units = new(StringComparer.OrdinalIgnoreCase) { ["us"] = false, ["metric"] = true };

    private static readonly Dictionary<string, Drying> Verdicts = new(StringComparer.OrdinalIgnoreCase)
    {
        ["pass"] = Drying.Hard,
        ["fail"] = Drying.Soft,
        ["fresh"] = Drying.Fresh,
        ["slow"] = Drying.Slow,
        ["soft"] = Drying.Soft,
    };

    /// <summary>What people say for the words that are told.</summary>
    private static readonly Dictionary<string, string> VerdictsSaid = new(StringComparer.OrdinalIgnoreCase)
    {
        ["passed"] = "pass",
        ["hard"] = "pass",
        ["failed"] = "fail",
        ["tacky"] = "fail",
    };

    private static readonly Dictionary<string, Pinch> Pinches = new(StringComparer.OrdinalIgnoreCase)
    {
        ["all"] = Core.Supplies.Pinch.All,
        ["cloudy"] = Core.Supplies.Pinch.Cloudy,
        ["gel"] = Core.Supplies.Pinch.Gel,
    };

    private static readonly string[] MomentForms = ["yyyy-MM-dd", "yyyy-MM-ddTHH:mm", "yyyy-MM-ddTHH:mm:ss", "yyyy-MM-dd HH:mm", "yyyy-MM-dd HH:mm:ss", "yyyy-MM-ddTH:mm", "yyyy-MM-dd H:mm"];

    /// <summary>Days that are said by their distance from now.</summary>
    private static readonly Dictionary<string, int> DaysSaid = new(StringComparer.OrdinalIgnoreCase) { ["today"] = 0, ["yesterday"] = -1 };

    /// <summary>One of the container materials.</summary>
    public static Result<ContainerMaterial> Material(string text, string where) => Choice(text, where, ContainerMaterials.ByWord);

    /// <summary>True for metric first.</summary>
    public static Result<bool> Metric(string text, string where) => Choice(text, where, Units);

    /// <summary>How drops dried.</summary>
    public static Result<Drying> Verdict(string text, string where) => Choice(VerdictsSaid.GetValueOrDefault(text.Trim(), text), where, Verdicts);

    /// <summary>How a pinch of flakes dissolved.</summary>
    public static Result<Pinch> Pinch(string text, string where) => Choice(text, where, Pinches);

    /// <summary>A set of labelling rules.</summary>
    public static Result<RuleSet> Rules(string text, string where) => Choice(text, where, RuleSets);

    /// <summary>A date, with or without a time: <c>2026-03-09</c>, <c>2026-03-09 14:30</c>, <c>yesterday</c>; a date alone is taken as noon, when
    /// a bench is at work. <c>now</c> and <c>today</c> are this moment.</summary>
    public static Func<string, string, Result<DateTime>> Moment(DateTime now) => (text, where) =>
    {
        var written = string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        if (written.ToUpperInvariant() is "NOW" or "TODAY")
        {
            return now;
        }

        var day = written.Split(' ')[0];
        var said = DaysSaid.TryGetValue(day, out var days) ? $"{now.AddDays(days).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}{written[day.Length..]}" : written;
        if (!DateTime.TryParseExact(said, MomentForms, CultureInfo.InvariantCulture, DateTimeStyles.None, out var moment))
        {
            return TypingProblems.NotAMoment(text, where);
        }

        return moment.Year is < FirstYear or > LastYear ? TypingProblems.MomentTooFar(text, FirstYear, LastYear, where)
            : said.Contains(':', StringComparison.Ordinal) ? moment : moment.AddHours(12);
    };

    /// <summary>A day.</summary>
    public static Func<string, string, Result<DateOnly>> Day(DateTime now) => (text, where) => Moment(now)(text, where).Then<DateOnly>(m => DateOnly.FromDateTime(m));

    /// <summary>A date that does not lie ahead.</summary>
    public static Func<string, string, Result<DateOnly>> DayUntil(DateTime now) => (text, where) =>
        Day(now)(text, where).Then<DateOnly>(day => day <= DateOnly.FromDateTime(now) ? day : TypingProblems.DayAhead(text, where));

    /// <summary>One line of text.</summary>
    public static Func<string, string, Result<string>> TextUpTo(int longest) => (text, where) => PlainText.Read(text, longest, where);

    /// <summary>One line of text that a label or card may print, so that it must be able to.</summary>
    public static Func<string, string, Result<string>> PrintedUpTo(int longest) => (text, where) =>
        PlainText.Read(text, longest, where).Then(line => OwnWords.Demand(line, where, new SkiaRuler()));

    /// <summary>A telephone number, as labels print it: 112 is the shortest there is.</summary>
    public static Result<string> Telephone(string text, string where) =>
        PrintedUpTo(40)(text, where).Then<string>(number => number.Count(char.IsAsciiDigit) >= 3 ? number : TypingProblems.NotATelephone(text, where));

    /// <summary>A whole number between two bounds.</summary>
    /// <param name="least">The least.</param>
    /// <param name="most">The most.</param>
    /// <param name="such">One of them, for an example; else the least.</param>
    public static Func<string, string, Result<int>> WholeNumber(int least, int most, int? such = null) => (text, where) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var value) && value >= least && value <= most
            ? value
            : TypingProblems.NotAWholeNumber(text, least, most, such ?? least, where);

    /// <summary>A number between two bounds, which is no percentage.</summary>
    /// <param name="least">The least.</param>
    /// <param name="most">The most.</param>
    /// <param name="such">One between them, for an example.</param>
    public static Func<string, string, Result<double>> Number(double least, double most, double such) => (text, where) =>
        !TryNumber(text, out var value) || NumberText.IsAmbiguous(text) ? text.Contains('%', StringComparison.Ordinal)
            ? TypingProblems.NoPercentage(text, least, most, such, where)
            : TypingProblems.NotANumber(text, least, most, such, where)
        : NumberText.MayPartThousands(text.Trim()) && value * 1000 <= most ? TypingProblems.TwoNumbers(text, value, where)
        : value >= least && value <= most ? value
        : TypingProblems.NotANumber(text, least, most, such, where);

    /// <summary>Percent between two bounds, with the sign or without.</summary>
    /// <inheritdoc cref="Number"/>
    public static Func<string, string, Result<double>> Percent(double least, double most, double such) => (text, where) =>
        Number(least, most, such)(Figure(text), where) is { Ok: true } read ? read : TypingProblems.NotANumber(text, least, most, such, where);

    /// <summary>Whole percent between two bounds, with the sign or without.</summary>
    /// <inheritdoc cref="Number"/>
    public static Func<string, string, Result<int>> WholePercent(int least, int most, int such) => (text, where) => WholeNumber(least, most, such)(Figure(text), where);

    /// <summary>What is left of a whole, above nothing and below all: <c>0.01</c>, <c>1 %</c>.</summary>
    /// <param name="such">An example.</param>
    public static Func<string, string, Result<double>> Fraction(string such) => (text, where) =>
    {
        var percent = text.Trim().EndsWith('%');
        var read = TryNumber(Figure(text), out var value) ? percent ? value / 100 : value : 0;
        return read is > 0 and < 1 ? read : TypingProblems.NotAFraction(text, such, where);
    };

    private static string Figure(string percent) => percent.Trim() is var text && text.EndsWith('%') ? text[..^1].TrimEnd() : text;

    private static bool TryNumber(string text, out double value) =>
        double.TryParse(text.TrimEnd().Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value);

    /// <summary>One of a few words.</summary>
    public static Result<T> Choice<T>(string text, string where, IReadOnlyDictionary<string, T> choices)
        where T : notnull => choices.TryGetValue(text.Trim(), out var value) ? value : TypingProblems.NotAChoice(text, where, choices.Keys);
}
