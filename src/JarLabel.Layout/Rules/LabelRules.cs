using JarLabel.Core.Catalog;
using JarLabel.Core.Hazards;
using UnitsNet;

namespace JarLabel.Layout.Rules;

/// <summary>Holds a printed label against the rules of its region. Pure: it looks at the marks and says what it sees.</summary>
public static class LabelRules
{
    /// <summary>Packages that US rules call small, 29 CFR 1910.1200(f)(12).</summary>
    private static readonly Volume Small = Volume.FromMilliliters(100);

    /// <summary>Packages that need nothing but their name, 29 CFR 1910.1200(f)(12).</summary>
    private static readonly Volume Smallest = Volume.FromMilliliters(3);

    /// <summary>What the label meets, what it lacks, and what stands on the card instead.</summary>
    /// <param name="label">The label as placed.</param>
    /// <param name="text">All that might have been printed.</param>
    /// <param name="capacity">What the container holds; null when nobody said.</param>
    /// <param name="rules">Whose rules.</param>
    /// <param name="ruler">Measures the typeface.</param>
    /// <param name="blackOnly">True when the printer has one ink.</param>
    public static LabelRuleReport Of(PlacedLabel label, LabelText text, Volume? capacity, RuleSet rules, ITextRuler ruler, bool blackOnly = false)
    {
        var shown = new ShownOnLabel(label, text, ruler);
        Finding[] findings =
        [
            .. rules == RuleSet.Osha ? American(shown, capacity) : European(shown, capacity),
            .. text.Pictograms.Count > 0 ? [Frames(shown, rules, blackOnly)] : Array.Empty<Finding>(),
        ];
        return new LabelRuleReport(
            [.. findings.Where(f => f.Lack is null).Select(f => f.Rule)],
            [.. findings.Where(f => f.Lack is not null).Select(f => $"{f.Rule}: {f.Lack}")],
            [.. shown.OnCard]);
    }

    private static IEnumerable<Finding> American(ShownOnLabel shown, Volume? capacity)
    {
        yield return new("29 CFR 1910.1200(f)(6)", Missing(
            (shown.Identified, "a name"),
            // A bare signal word says how bad it is, not what: it tells no hazard.
            (shown.Has("hazards") || shown.Has("dangers") || shown.PictogramSide is not null, "words, pictures or symbols that tell the hazards")));
        if (capacity <= Small)
        {
            yield return new("29 CFR 1910.1200(f)(12)", capacity <= Smallest ? Missing((shown.Identified, "a name")) : Missing(
                (shown.Identified, "a name"),
                (shown.HasAllPictograms, "every pictogram"),
                (shown.HasAll("signal"), "the signal word"),
                (shown.Has("owner"), "the maker's name and telephone"),
                (shown.Says("outer package"), "a line that the full label is on the outer package")));
        }

        if (shown.Wanted("poison"))
        {
            yield return new("16 CFR 1500.14(b)(4), 4 % methanol and more", Missing(
                (shown.HasSkull, "the skull and crossbones"),
                (shown.HasAll("signal") && shown.Says("DANGER"), "the signal word \"danger\""),
                (shown.Says(PoisonWords.Words[0]), "the word \"poison\""),
                (shown.HasAll("poison"), "the poison wording for methanol")));
            yield return new("16 CFR 1500.3(b)(14), household liquids", Missing(
                (shown.Says("contents", "methanol") || shown.Says("swallowed", "methanol"), "methanol by its name"),
                (shown.HasAll("hazards"), "every principal hazard"),
                (shown.Has("precautions"), "precautions"),
                (shown.Has("firstAid"), "first aid"),
                (shown.Has("lid"), "\"keep out of the reach of children\""),
                (shown.HasPlace, "the maker's name and place of business")));
        }
    }

    private static IEnumerable<Finding> European(ShownOnLabel shown, Volume? capacity)
    {
        var sizes = CapacitySizes.For(capacity);
        yield return new("CLP Article 17", Missing(
            (shown.Identified, "a name"),
            (shown.HasAllPictograms, "every pictogram"),
            (shown.HasAll("signal"), "the signal word"),
            (shown.HasAll("hazards"), "every hazard statement"),
            (shown.Has("precautions"), "precautionary statements"),
            (shown.Has("owner"), "the maker's name, address and telephone")));
        yield return new("CLP Annex I table 1.3, label size", shown.Width >= sizes.Short && shown.Length >= sizes.Long
            ? null
            : Say($"{shown.Width:0.#} x {shown.Length:0.#} mm; {sizes.Short:0} x {sizes.Long:0} mm is asked{(sizes.UpToLiters <= 3 ? ", if possible" : "")}"));
        if (shown.PictogramSide is not null || !shown.HasAllPictograms)
        {
            yield return new("CLP Annex I table 1.3, pictogram size", shown.PictogramSide is { } side ? SideOf(side, sizes) : "there is none on the label");
        }

        if (shown.XHeight is { } height)
        {
            yield return new("Regulation (EU) 2024/2865, height of letters, a duty from 2028", AtLeast(height, sizes.XHeight, "for a small x"));
        }
    }

    private static Finding Frames(ShownOnLabel shown, RuleSet rules, bool blackOnly) => new(
        rules == RuleSet.Osha ? "29 CFR 1910.1200 Appendix C.2.3, red frames" : "CLP Annex I 1.2.1.1, red frames",
        blackOnly ? "this printer prints black only; the rule asks for colour"
        : !shown.HasAllPictograms ? "a pictogram is not on the label"
        : !shown.RedOnlyInPictograms ? "red stands elsewhere than around a pictogram"
        : null);

    private static string? SideOf(double pictogram, CapacitySizes sizes) => AtLeast(pictogram, sizes.LeastPictogramSide, "a side")
        ?? (AtLeast(pictogram, sizes.PictogramSide, "a side") is { } lack ? $"{lack}, if possible" : null);

    // Lengths rounded from inches or points are forgiven a hundredth.
    private static string? AtLeast(double has, double asked, string what) =>
        has >= asked - 0.01 ? null : Say($"{has:0.0} mm {what}; {asked:0.0} mm is asked");

    private static string? Missing(params (bool There, string What)[] demands) =>
        demands.Where(d => !d.There).Select(d => d.What).ToArray() is { Length: > 0 } missing ? $"not on the label: {string.Join(", ", missing)}" : null;

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private readonly record struct Finding(string Rule, string? Lack);
}

/// <summary>How one printed label stands against the labelling rules of a region. A jar for one's own use need not meet them all; this says
/// what it does meet.</summary>
/// <param name="Satisfies">Rules whose demands the label meets, each with its paragraph.</param>
/// <param name="Lacks">What a rule asks for and the label does not have, one sentence each.</param>
/// <param name="MovedToCard">Wordings that had no room and stand on the jar card.</param>
public sealed record LabelRuleReport(IReadOnlyList<string> Satisfies, IReadOnlyList<string> Lacks, IReadOnlyList<string> MovedToCard);
