namespace JarLabel.Core.Labels;

/// <summary>What the code on a label says: with a base address the upper-case address of the jar's page, which is the shortest code;
/// without one a few short sentences that any phone shows with no network. Both end in the jar's number, check digit and revision, and keep to
/// the 45 signs of a code's alphanumeric mode: line breaks would cost two sizes, 41 modules a side instead of 33.</summary>
/// <param name="Jar">The jar.</param>
/// <param name="Revision">The revision the label speaks of.</param>
public sealed partial record LabelCode(JarNumber Jar, int Revision)
{
    /// <summary>The payload for a label.</summary>
    public static string Write(LabelFacts facts)
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"{facts.Jar.Number}.{facts.Jar.Revision}");
        return facts.BaseUrl is { } address ? $"{address.TrimEnd('/')}/J/{name}".ToUpperInvariant() : Sentences(facts, name);
    }

    /// <summary>The jar and revision in a scanned or typed payload, in capitals or not; null when it is no code of ours.</summary>
    public static LabelCode? Read(string payload)
    {
        var match = Ending().Match(payload.Trim());
        return match.Success
            && JarNumber.Read(match.Groups["jar"].Value, "").TryGet(out var jar, out _)
            && int.TryParse(match.Groups["revision"].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var revision)
            ? new LabelCode(jar, revision)
            : null;
    }

    /// <summary>True when what was typed is no more than the end of a code, <c>JAR 142-5.1</c>, which does not tell one shop from
    /// another.</summary>
    public bool IsShort(string typed)
    {
        return string.Equals(typed.Trim(), string.Create(CultureInfo.InvariantCulture, $"JAR {Jar}.{Revision}"), StringComparison.OrdinalIgnoreCase);
    }

    private const string TestFirst = "TEST FIRST. IN DOUBT";

    /// <summary>True for the code of a label that gives no use-by because the jar was in doubt. The address of a page says neither.</summary>
    public static bool SaysInDoubt(string payload) => payload.Contains(TestFirst, StringComparison.Ordinal);

    private static string Sentences(LabelFacts facts, string name)
    {
        var jar = facts.Jar;
        var cut = jar.Contents.Cut?.PoundsPerUsGallon.ToString("0.##", CultureInfo.InvariantCulture);
        var grade = string.Join('+', jar.Contents.Grades);
        return string.Join(
            ". ",
            $"SHELLAC {cut} LB {grade}".ToUpperInvariant(),
            Dates(jar),
            HazardLine(facts.Hazards),
            $"JAR {name}");
    }

    // A failure or a doubt is told in place of both dates, so that the code of such a jar is no larger than it was before.
    private static string Dates(Jar jar) => jar.FailedOn is { } failed
        ? string.Create(CultureInfo.InvariantCulture, $"DO NOT USE. TEST FAILED {failed:yyyy-MM-dd}")
        : jar.DoubtedSince is { } since
        ? string.Create(CultureInfo.InvariantCulture, $"{TestFirst} {since:yyyy-MM-dd}")
        : string.Create(CultureInfo.InvariantCulture, $"MIXED {jar.MixedAt:yyyy-MM-dd}. USE BY {jar.Dates.UseBy:yyyy-MM-dd}");

    /// <summary>The signal word and what is worst, in a few capitals.</summary>
    internal static string HazardLine(HazardAssessment hazards) => string.Join(
        ' ',
        ((string?[])
        [
            hazards.SignalText?.ToUpperInvariant(),
            hazards.FlammableCategory is null ? null : "FLAMMABLE",
            hazards.CanPoison ? "POISON" : null,
        ]).OfType<string>());

    [GeneratedRegex(@"(?:/J/|\bJAR )(?<jar>\d{1,9}-\d)\.(?<revision>\d{1,6})$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Ending();
}
