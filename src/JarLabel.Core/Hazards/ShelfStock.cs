namespace JarLabel.Core.Hazards;

/// <summary>What stands on one shelf, as fire and poison see it.</summary>
/// <param name="Liquids">Jar by jar and bottle by bottle.</param>
public sealed record ShelfStock(IReadOnlyList<StockedLiquid> Liquids)
{
    /// <summary>By flammable-liquid category, the most easily lit first, what does not burn last.</summary>
    public IReadOnlyList<StockedCategory> Categories =>
    [
        .. Liquids.GroupBy(l => l.Hazards.FlammableCategory)
            .OrderBy(g => g.Key ?? int.MaxValue)
            .Select(g => new StockedCategory(
                g.Key,
                g.Count(),
                Volume.FromMilliliters(g.Sum(l => l.Liquid.Milliliters)),
                Mass.FromGrams(g.Sum(l => l.Weight.Grams)))),
    ];

    /// <summary>The jars and bottles that hold methanol, or may hold it.</summary>
    public IReadOnlyList<StockedLiquid> WithMethanol => [.. Liquids.Where(l => l.Hazards.MethanolPercent > 0)];

    /// <summary>True when one of them is, or may be, a poison: the skull, harm to organs, the poison wording, or contents nobody knows.</summary>
    public bool Toxic => Liquids.Any(l =>
        l.Hazards.PoisonWording || !l.Hazards.CompositionKnown || l.Hazards.Pictograms.Contains("GHS06") || l.Hazards.Pictograms.Contains("GHS08"));

    /// <summary>The gravest signal word; on an empty shelf danger, because what it is for is flammable.</summary>
    public SignalWord Signal => Liquids.Count == 0 ? SignalWord.Danger : Liquids.Max(l => l.Hazards.Signal);

    /// <summary>The limits for a room outside a flammables cabinet that this shelf alone passes.</summary>
    public IReadOnlyList<StorageLimit> PassedOutsideCabinet(RuleSet rules, ShopCatalog catalog) => StorageAdvice.PassedBy(
        Categories.Where(c => c.Category is not null).Select(c => (c.Category!.Value, c.Liquid, c.Weight)),
        StorageScope.OutsideCabinet,
        rules,
        catalog);
}

/// <summary>All of one flammable-liquid category on a shelf.</summary>
/// <param name="Category">1, the most easily lit, to 4; null for what does not burn.</param>
/// <param name="Containers">How many jars and bottles.</param>
/// <param name="Liquid">How much together.</param>
/// <param name="Weight">How heavy together.</param>
public sealed record StockedCategory(int? Category, int Containers, Volume Liquid, Mass Weight);

/// <summary>One jar's or bottle's liquid as a store of flammable liquid counts it.</summary>
/// <param name="Hazards">What it is.</param>
/// <param name="Liquid">How much.</param>
/// <param name="Weight">How heavy, flakes and solvent together.</param>
public sealed record StockedLiquid(HazardAssessment Hazards, Volume Liquid, Mass Weight)
{
    /// <summary>True for a bottle of alcohol, false for a jar.</summary>
    public bool IsBottle { get; init; }
}
