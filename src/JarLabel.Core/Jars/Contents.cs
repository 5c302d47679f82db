namespace JarLabel.Core.Jars;

/// <summary>What is in a jar: flakes by grade and solvents as poured. All else about the liquid follows from it.</summary>
/// <param name="Resins">Flakes, the largest part first.</param>
/// <param name="Solvents">Solvents, the largest part first.</param>
public sealed record Contents(IReadOnlyList<ResinPart> Resins, IReadOnlyList<SolventPart> Solvents)
{
    /// <summary>All flakes.</summary>
    [JsonIgnore]
    public Mass Flakes => Mass.FromGrams(Resins.Sum(r => r.Weight.Grams));

    /// <summary>The ids of its grades, each once.</summary>
    [JsonIgnore]
    public IReadOnlyList<string> Grades => [.. Resins.Select(r => r.Grade).Distinct()];

    /// <summary>All solvent, as poured.</summary>
    [JsonIgnore]
    public Volume Poured => Volume.FromMilliliters(Solvents.Sum(s => s.Poured.Milliliters));

    /// <summary>Weight of all solvent.</summary>
    [JsonIgnore]
    public Mass PouredWeight => Mass.FromGrams(Solvents.Sum(s => s.Weight.Grams));

    /// <summary>The cut; null when the jar is empty.</summary>
    [JsonIgnore]
    public PoundCut? Cut => Poured > Volume.Zero ? PoundCut.Of(Flakes, Poured) : null;

    /// <summary>Finished liquid.</summary>
    [JsonIgnore]
    public Volume Liquid => Poured + Shellac.VolumeOf(Flakes);

    /// <summary>The batch that would give these contents.</summary>
    [JsonIgnore]
    public Recipe? Recipe => Cut is { } cut ? new Recipe(cut, Flakes, Poured, PouredWeight / Poured) : null;

    /// <summary>True when nothing is left.</summary>
    [JsonIgnore]
    public bool IsEmpty => Resins.Count == 0 && Solvents.Count == 0;

    /// <summary>True for a liquid that a jar can hold: of a cut that there is, and no more of it than there can be.</summary>
    [JsonIgnore]
    public bool IsLiquid => Resins.Count > 0 && Cut is not null && Poured.Milliliters <= EventBounds.MostAmount && Flakes.Grams <= EventBounds.MostAmount;

    /// <summary>A fresh batch of one grade in one solvent.</summary>
    public static Contents Of(Recipe recipe, string grade, string solvent, DateOnly? flakeDate, bool cloudy = false)
    {
        return new([new(grade, recipe.Flakes, flakeDate) { Cloudy = cloudy }], [new(solvent, recipe.Pour, recipe.PourWeight)]);
    }

    /// <summary>With more solvent in it.</summary>
    public Contents With(SolventPart added) => With(new Contents([], [added]));

    /// <summary>With more flakes in it.</summary>
    public Contents With(ResinPart added) => With(new Contents([added], []));

    /// <summary>Poured together with another liquid. Flakes of one grade and age, and one solvent, come together as one part.</summary>
    public Contents With(Contents other) => Sorted(Resins.Concat(other.Resins), Solvents.Concat(other.Solvents));

    /// <summary>A part of the liquid, which has everything in it in the same proportion.</summary>
    /// <param name="fraction">0 to 1.</param>
    public Contents Share(double fraction)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(fraction);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(fraction, 1);
        return Times(fraction);
    }

    /// <summary>What is left when a part of it is poured off; null when there is not so much of something in it.</summary>
    public Contents? Without(Contents taken)
    {
        var left = With(taken.Times(-1));
        return left.Resins.All(r => r.Weight > -Trace) && left.Solvents.All(s => s.Weight > -Trace)
            ? Dry(new([.. left.Resins.Where(r => r.Weight > Trace)], [.. left.Solvents.Where(s => s.Weight > Trace)]))
            : null;
    }

    /// <summary>A film on the glass, of which only one part is more than the sums leave over, is no liquid either.</summary>
    private static Contents Dry(Contents left) => (left.Resins.Count == 0 || left.Solvents.Count == 0) && left.Flakes + left.PouredWeight < Film ? new([], []) : left;

    private static readonly Mass Film = Mass.FromMilligrams(1);

    /// <summary>What is less than this, a thousandth of a milligram, is what the sums leave over and no liquid.</summary>
    private static readonly Mass Trace = Mass.FromMicrograms(1);

    private Contents Times(double factor) => new(
        [.. Resins.Select(r => r with { Weight = r.Weight * factor })],
        [.. Solvents.Select(s => s with { Poured = s.Poured * factor, Weight = s.Weight * factor })]);

    private static Contents Sorted(IEnumerable<ResinPart> resins, IEnumerable<SolventPart> solvents) => new(
        [.. resins
            .GroupBy(r => (r.Grade, r.FlakeDate, r.Cloudy))
            .Select(g => new ResinPart(g.Key.Grade, Mass.FromGrams(g.Sum(r => r.Weight.Grams)), g.Key.FlakeDate) { Cloudy = g.Key.Cloudy })
            .OrderByDescending(r => r.Weight)],
        [.. solvents
            .GroupBy(s => s.Solvent)
            .Select(g => new SolventPart(g.Key, Volume.FromMilliliters(g.Sum(s => s.Poured.Milliliters)), Mass.FromGrams(g.Sum(s => s.Weight.Grams))))
            .OrderByDescending(s => s.Poured)]);
}

/// <summary>Flakes of one grade in a jar.</summary>
/// <param name="Grade">The grade's id.</param>
/// <param name="Weight">Weight, stored in grams.</param>
/// <param name="FlakeDate">When the flakes were made or bought, where known.</param>
public sealed record ResinPart(string Grade, [property: JsonPropertyName("grams")] Mass Weight, DateOnly? FlakeDate = null)
{
    /// <summary>True when a pinch of the bag they came from had dissolved cloudy.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
    public bool Cloudy { get; init; }
}

/// <summary>One solvent in a jar.</summary>
/// <param name="Solvent">The solvent's id.</param>
/// <param name="Poured">Volume as poured, stored in millilitres.</param>
/// <param name="Weight">Weight of that volume, stored in grams.</param>
public sealed record SolventPart(
    string Solvent,
    [property: JsonPropertyName("milliliters")] Volume Poured,
    [property: JsonPropertyName("grams")] Mass Weight);
