namespace JarLabel.Core.Labels;

/// <summary>The dangers in a few plain words, for a label without room for the statements: what 29 CFR 1910.1200(f)(6)(ii) calls general information on
/// the hazards. The statements themselves stand on the jar card.</summary>
internal static class ShortDangers
{
    /// <summary>What the flame means, by the statement.</summary>
    private static readonly Dictionary<string, string> Fire = new(StringComparer.Ordinal)
    {
        ["H224"] = "extremely flammable",
        ["H225"] = "highly flammable",
        ["H226"] = "flammable",
        ["H227"] = "combustible",
    };

    private const string Toxic = "toxic", Corrosive = "corrosive";

    /// <summary>Harm to people, the gravest first. No label is so small that a grave one may go; its shortest word stands beside it.</summary>
    private static readonly (string Word, string? Grave, string[] Statements)[] Harm =
    [
        ("toxic", Toxic, ["H300", "H301", "H310", "H311", "H330", "H331"]),
        ("corrosive", Corrosive, ["H314"]),
        ("damages organs", Toxic, ["H370", "H371", "H372", "H373"]),
        ("bad for the lungs if swallowed", Toxic, ["H304"]),
        ("may cause cancer", Toxic, ["H350", "H351"]),
        ("lasting harm", Toxic, ["H340", "H341", "H360", "H361", "H362"]),
        ("damages eyes", Corrosive, ["H318"]),
        ("allergen", null, ["H317", "H334"]),
        ("harmful", null, ["H302", "H312", "H332"]),
        ("irritates eyes", null, ["H319"]),
        ("irritates", null, ["H315", "H335"]),
        ("may make drowsy", null, ["H336"]),
    ];

    /// <summary>The most telling first; none where there is no danger.</summary>
    internal static string[] Of(HazardAssessment hazards)
    {
        var codes = hazards.Statements;
        string[] fire = [.. codes.Where(Fire.ContainsKey).Select(code => Fire[code]).Take(1)];
        string[] plain = fire is ["combustible"] or [] ? fire : ["flammable"];
        var harm = Harm.Where(kind => kind.Statements.Any(codes.Contains)).ToArray();
        string[] gravest = [.. harm.Select(kind => kind.Word).Take(1)];
        // Where the signal says "poison" already, grave harm need not be said twice.
        string[] kept = harm is [{ Grave: { } word }, ..] && !hazards.PoisonWording ? [word] : [];
        return
        [
            .. new[]
            {
                Said(fire, [.. harm.Select(kind => kind.Word).Take(2)]),
                Said(fire, gravest),
                Said(plain, gravest),
                Said(fire, kept),
                Said(plain, kept),
            }.Where(words => words.Length > 0).Distinct(),
        ];
    }

    private static string Said(string[] fire, string[] harm) =>
        string.Join(", ", fire.Concat(harm)) is { Length: > 0 } words ? Capital.Of(words) : "";
}
