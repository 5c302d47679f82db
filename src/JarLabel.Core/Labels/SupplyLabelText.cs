namespace JarLabel.Core.Labels;

/// <summary>The words of the labels for a bag of flakes and a bottle of alcohol.</summary>
public static class SupplyLabelText
{
    private const string Closing = "Local rules, the seller's own label and the data sheet come first.";

    /// <summary>Everything that may be printed of a bag. Dry flakes have no hazard class; their age is what counts.</summary>
    /// <param name="bag">The bag.</param>
    /// <param name="catalog">Names of grades.</param>
    /// <param name="owner">Shop and contact, most telling first; empty for none.</param>
    public static LabelText For(Bag bag, ShopCatalog catalog, IReadOnlyList<string> owner)
    {
        var grade = catalog.GradeOf(bag.Grade);
        var words = Common($"bag {bag.Number}", owner, bag.Note);
        words["grade"] = bag.Unfit ? [$"{Capital.Of(PinchWords.Unfit)}: {grade.Name}", Capital.Of(PinchWords.Unfit)] : [Capital.Of(grade.Name) + " flakes", Capital.Of(grade.Name)];
        words["amounts"] = [$"{BenchAmount.Both(bag.Bought)} when it came", BenchAmount.Both(bag.Bought)];
        words["closing"] = ["Keep cool, dry and dark."];
        return new LabelText(words, None, Table(["made", DateWords.Of(bag.Made)], Freshness(bag, catalog.Keeping.Require(grade.Keeping))), [], grade.Tone, SupplyCode.Of(bag));
    }

    /// <summary>Everything that may be printed of a bottle.</summary>
    /// <param name="bottle">The bottle.</param>
    /// <param name="hazards">What is in it under the rules that apply.</param>
    /// <param name="catalog">Names of solvents, phrases.</param>
    /// <param name="owner">Shop and contact, most telling first; empty for none.</param>
    /// <param name="poisonCenter">The poison center's number as the shop set it; null for that of the rules' region.</param>
    public static LabelText For(Bottle bottle, HazardAssessment hazards, ShopCatalog catalog, IReadOnlyList<string> owner, string? poisonCenter = null)
    {
        var solvent = catalog.SolventOf(bottle.Solvent);
        var words = Common($"bottle {bottle.Number}", owner, bottle.Note);
        words["title"] = [Capital.Of(solvent.Name), Capital.Of(solvent.ShortName)];
        words["contents"] = [ContentsWords.Of(solvent, hazards)];
        words["amounts"] = [$"{BenchAmount.Both(bottle.Bought)} when it came", BenchAmount.Both(bottle.Bought)];
        words["closing"] = [Closing];
        words["moreOnCard"] = ["more phrases: the seller's data sheet"];
        foreach (var (key, wordings) in DangerWords.Of(hazards, poisonCenter))
        {
            words[key] = wordings;
        }

        var lists = new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal)
        {
            ["hazards"] = hazards.StatementTexts(catalog),
            ["precautions"] = HazardWords.PrecautionTexts(hazards.Precautions, hazards.Rules, catalog, PoisonCenter.Number(hazards.Rules, poisonCenter)),
            ["firstAid"] = FirstAidWords.Of(hazards, poisonCenter),
            ["handling"] = [.. hazards.Doubts, "Keep the lid tight, cool and dark: alcohol draws water from the air."],
        };
        return new LabelText(words, lists, Table(["since", DateWords.Of(bottle.Since)]), hazards.Pictograms, null, SupplyCode.Of(bottle, LabelCode.HazardLine(hazards)));
    }

    /// <summary>Until when it is fresh, or once a pinch did not dissolve well, that instead.</summary>
    private static IReadOnlyList<string> Freshness(Bag bag, KeepingClass kind) => bag.Test is { Pinch: not Pinch.All } test
        ? [test.Pinch == Pinch.Gel ? "pinch a gel" : "pinch cloudy", DateWords.Of(test.Day)]
        : ["fresh until", DateWords.Estimate(FreshUntil(bag, kind))];

    /// <summary>Half of its dry life costs a jar nothing (<see cref="Keeping.FlakeAge"/>).</summary>
    private static DateOnly FreshUntil(Bag bag, KeepingClass kind) => Keeping.FlakeAge.FreshUntil(bag.Made, kind);

    private static Dictionary<string, IReadOnlyList<string>> Common(string number, IReadOnlyList<string> owner, string? note)
    {
        var words = new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal) { ["jar"] = [number] };
        if (owner.Count > 0)
        {
            words["owner"] = owner;
        }

        if (note is not null)
        {
            words["note"] = [note];
        }

        return words;
    }

    private static IReadOnlyDictionary<string, IReadOnlyList<string>> None { get; } = new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal);

    private static Dictionary<string, IReadOnlyList<IReadOnlyList<string>>> Table(params IReadOnlyList<string>[] dates) =>
        new(StringComparer.Ordinal) { ["dates"] = dates };
}
