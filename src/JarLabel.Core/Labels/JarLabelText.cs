using System.Globalization;
using JarLabel.Core.Hazards;
using JarLabel.Core.Jars;

namespace JarLabel.Core.Labels;

/// <summary>The words of a jar, for its label and its card alike. Rounding happens here and nowhere else.</summary>
public static class JarLabelText
{
    private const string Closing = "Local rules, the alcohol's own label and its data sheet come first.";

    /// <summary>Everything that may be printed of a jar.</summary>
    public static LabelText For(LabelFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
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
            ["useByDate"] = jar.FailedOn is { } failed ? FailureWords.Wordings(failed) : [DateWords.Estimate(jar.Dates.UseBy)],
            ["testDate"] = [DateWords.Estimate(jar.Dates.TestFrom)],
            ["readyDate"] = ["≈ " + DateWords.Of(jar.Dates.Ready)],
            ["keeping"] = [jar.FailedOn is null ? $"use-by: {KeepingWords.Basis(jar.Dates)}" : FailureWords.OnCard],
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
