namespace JarLabel.Core.Labels;

/// <summary>The words of a jar, for its label and its card alike. Rounding happens here and nowhere else.</summary>
public static class JarLabelText
{
    private const string Closing = "Local rules, the alcohol's own label and its data sheet come first.";

    /// <summary>Everything that may be printed of a jar.</summary>
    public static LabelText For(LabelFacts facts)
    {
        return new LabelText(Words(facts), Lists(facts), Tables(facts), facts.Hazards.Pictograms, GradeWords.Tone(facts.Jar.Contents, facts.Catalog), LabelCode.Write(facts));
    }

    private static Dictionary<string, IReadOnlyList<string>> Words(LabelFacts facts)
    {
        var (jar, catalog) = (facts.Jar, facts.Catalog);
        var words = new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal)
        {
            ["grade"] = [GradeWords.Of(jar.Contents, catalog)],
            ["jar"] = [jar.Number.ToString()],
            ["revision"] = [string.Create(CultureInfo.InvariantCulture, $"rev {jar.Revision}")],
            ["jarLine"] = JarLine(jar),
            ["solvent"] = [$"in {GradeWords.Solvents(jar.Contents, catalog)}"],
            ["contents"] = [ContentsWords.Of(jar.Contents, catalog)],
            ["mixedDate"] = [DateWords.Of(DateOnly.FromDateTime(jar.MixedAt))],
            ["useByDate"] = FailureWords.Wordings(jar) is { Length: > 0 } against ? against : [DateWords.Estimate(jar.Dates.UseBy)],
            ["testDate"] = [DateWords.Estimate(jar.TestFrom)],
            ["readyDate"] = ["≈ " + DateWords.Of(jar.Dates.Ready)],
            ["keeping"] = [FailureWords.OnCard(jar) ?? $"use-by: {KeepingWords.Basis(jar.Dates)}"],
            ["closing"] = [Closing],
            ["moreOnCard"] = ["all phrases: jar card", "see jar card", "see card"],
            ["stepsBetween"] = [$"{{0}} more in between: jarlabel jar {jar.Number.Value}"],
        };
        AddCut(words, jar);
        AddWhereKnown(words, facts);
        return words;
    }

    private static string[] JarLine(Jar jar)
    {
        var line = string.Create(CultureInfo.InvariantCulture, $"jar {jar.Number} · rev {jar.Revision}");
        return jar.Changed is { } changed ? [$"{line} · {changed.Word} {DateWords.Of(DateOnly.FromDateTime(changed.At))}", line] : [line];
    }

    private static void AddCut(Dictionary<string, IReadOnlyList<string>> words, Jar jar)
    {
        if (jar.Contents.Recipe is not { } recipe)
        {
            return;
        }

        words["cut"] = [VulgarFraction.Brief(recipe.Cut.PoundsPerUsGallon)];
        words["cutUnit"] = ["lb cut"];
        words["cutMetric"] = [CutWords.Metric(recipe.Cut)];
        words["title"] = [$"{CutWords.Of(recipe.Cut)} shellac"];
        words["batch"] = [$"{BenchAmount.Metric(recipe.Pour)} + {BenchAmount.Metric(recipe.Flakes)} flakes = {BenchAmount.Metric(recipe.Makes)}"];
        words["amounts"] =
        [
            $"{BenchAmount.Both(recipe.Pour)} alcohol + {BenchAmount.Both(recipe.Flakes)} flakes = {BenchAmount.Both(recipe.Makes)}",
            .. words["batch"],
        ];
    }

    private static void AddWhereKnown(Dictionary<string, IReadOnlyList<string>> words, LabelFacts facts)
    {
        foreach (var (key, wordings) in DangerWords.Of(facts.Hazards, facts.PoisonCenter))
        {
            words[key] = wordings;
        }

        Add("rags", RagWords.ForLabel(facts.Jar.Job));
        Add("owner", Joined(facts.ShopName, facts.Contact), facts.ShopName);
        Add("job", facts.Jar.Job);
        Add("note", facts.Jar.Note);
        Add("by", facts.Jar.By is { } by ? $"mixed by {by}" : null);

        void Add(string name, params string?[] wordings)
        {
            if (wordings.OfType<string>().Distinct(StringComparer.Ordinal).ToArray() is { Length: > 0 } known)
            {
                words[name] = known;
            }
        }
    }

    private static Dictionary<string, IReadOnlyList<string>> Lists(LabelFacts facts) => new(StringComparer.Ordinal)
    {
        ["hazards"] = facts.Hazards.StatementTexts(facts.Catalog),
        ["precautions"] = HazardWords.PrecautionTexts(facts.Hazards.Precautions, facts.Hazards.Rules, facts.Catalog, PoisonCenter.Number(facts.Hazards.Rules, facts.PoisonCenter)),
        ["firstAid"] = FirstAidWords.Of(facts.Hazards, facts.PoisonCenter),
        ["handling"] = HandlingWords.For(facts),
    };

    private static Dictionary<string, IReadOnlyList<IReadOnlyList<string>>> Tables(LabelFacts facts) => new(StringComparer.Ordinal)
    {
        ["dates"] = JarTables.Dates(facts.Jar),
        ["batch"] = JarTables.Batch(facts.Jar),
        ["thinning"] = JarTables.Thinning(facts.Jar),
        ["history"] = JarTables.History(facts.History),
    };

    private static string? Joined(string? first, string? second) => (first, second) switch
    {
        (null, null) => null,
        _ => string.Join(" · ", ((string?[])[first, second]).OfType<string>()),
    };
}

/// <summary>How flakes are helped along without a fire. Common practice of the trade; a motor or a flame near alcohol vapour lights it.</summary>
public static class DissolveWords
{
    /// <summary>In one sentence, wherever dissolving is told of.</summary>
    public const string Safely = "To dissolve faster stand the jar, lid loose, in warm water away from any flame; no stove, blender, grinder or drill near alcohol.";
}

/// <summary>The grades and solvents in a jar, as printed.</summary>
internal static class GradeWords
{
    /// <summary><c>Garnet, dewaxed</c>; a blend names its parts, the largest first.</summary>
    internal static string Of(Contents contents, ShopCatalog catalog) =>
        Capital.Of(Names(contents, catalog));

    /// <summary>The same within a sentence.</summary>
    internal static string Names(Contents contents, ShopCatalog catalog) => string.Join(" + ", contents.Grades.Select(grade => catalog.GradeOf(grade).Name));

    /// <summary><c>ethanol 95 %</c>.</summary>
    internal static string Solvents(Contents contents, ShopCatalog catalog) =>
        string.Join(" + ", contents.Solvents.Select(s => catalog.SolventOf(s.Solvent).ShortName));

    /// <summary>The darkest grade's tone; waxy when any is.</summary>
    internal static Tone Tone(Contents contents, ShopCatalog catalog)
    {
        var grades = contents.Resins.Select(r => catalog.GradeOf(r.Grade)).ToArray();
        return new Tone(grades.Max(g => g.Tone.Filled), grades.Any(g => g.Waxy));
    }
}

/// <summary>How to treat the jar, in whole sentences, the most important first. Common practice.</summary>
internal static class HandlingWords
{
    internal static IReadOnlyList<string> For(LabelFacts facts) =>
    [
        .. facts.Hazards.Doubts,
        "Use-by is an estimate: past the test date let a few drops dry on glass. Still soft or tacky after 15 minutes, or marked by a thumbnail later: discard.",
        "Keep the lid tight, cool and dark: alcohol draws water from the air and the finish blushes.",
        .. Wax(facts),
        DissolveWords.Safely,
        RagWords.AtTheBench,
    ];

    private static string[] Wax(LabelFacts facts) =>
        facts.Jar.Contents.Resins.Any(r => facts.Catalog.GradeOf(r.Grade).HindersVarnishOnTop)
            ? ["It holds its wax: varnish or polyurethane does not hold on top."]
            : [];
}

/// <summary>How an estimated use-by was come by, in one short line.</summary>
public static class KeepingWords
{
    /// <summary><c>published claims and 6 drying tests here</c>.</summary>
    public static string Basis(KeepingDates dates)
    {
        return dates.Basis switch
        {
            null => "published claims, no drying test here yet",
            { Tests: 0, Related: var related } => $"published claims and {CountWords.Of(related, "tested jar")} of other kinds",
            { Tests: var tests } => $"published claims and {CountWords.Of(tests, "drying test")} here",
        };
    }
}

/// <summary>All that the printed words of one jar are made from.</summary>
/// <param name="Jar">The jar now.</param>
/// <param name="History">What happened to it, in order.</param>
/// <param name="Hazards">What its contents are under the rules that apply.</param>
/// <param name="Catalog">Names of grades and solvents, phrases.</param>
/// <param name="ShopName">The shop, or null.</param>
/// <param name="Contact">Whom to ask, or null.</param>
/// <param name="BaseUrl">Where codes lead, or null for codes that need no network.</param>
public sealed record LabelFacts(
    Jar Jar,
    IReadOnlyList<JarEvent> History,
    HazardAssessment Hazards,
    ShopCatalog Catalog,
    string? ShopName,
    string? Contact,
    string? BaseUrl)
{
    /// <summary>The poison center's number as the shop set it; null for that of the rules' region.</summary>
    public string? PoisonCenter { get; init; }
}

/// <summary>What is said of rags. A French polisher's pad holds a drop of drying oil, and rags with drying oil heat by themselves.</summary>
internal static class RagWords
{
    /// <summary>For every bench.</summary>
    internal const string AtTheBench = "Spread alcohol rags singly outdoors to dry. Rags with drying oil heat by themselves: flat outdoors, or under water in a closed metal can.";

    /// <summary>Parts of words that tell of work with a pad and oil, here and in neighbouring languages. Too many rather than too few: the line harms nobody.</summary>
    private static readonly string[] Polishing = ["polish", "polit", "polier", "french", "padd", "fadd", "rubber", "bodying", "glaz", "spirit", "muneca", "muñeca", "tampon"];

    /// <summary>The same as whole words: padauk is a wood.</summary>
    private static readonly string[] Tools = ["pad", "pads", "fad", "oil", "oiled"];

    /// <summary>For a label, the most telling first; none where the job is no French polishing.</summary>
    internal static string[] ForLabel(string? job) => IsFrenchPolishing(job)
        ? ["Oily rags heat by themselves and burn: dry flat outdoors, or under water in a closed metal can.", "Oily rags burn by themselves: flat outdoors, or under water."]
        : [];

    internal static bool IsFrenchPolishing(string? job) => job is not null && job
        .Split((char[])[' ', ',', ';', '.', ':', '-', '/', '(', ')', '\''], StringSplitOptions.RemoveEmptyEntries)
        .Any(word => Tools.Contains(word, StringComparer.OrdinalIgnoreCase) || Array.Exists(Polishing, stem => word.Contains(stem, StringComparison.OrdinalIgnoreCase)));
}

/// <summary>The tone bar: how many of five squares are filled, light to dark, and whether the grade holds its wax
/// (the last square is then ringed).</summary>
/// <param name="Filled">1 to 5.</param>
/// <param name="Waxy">True when the wax has not been taken out.</param>
public readonly record struct Tone(int Filled, bool Waxy);
