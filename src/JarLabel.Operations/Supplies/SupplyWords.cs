namespace JarLabel.Operations.Supplies;

/// <summary>A bottle's hazards, and what this shop prints on bags and bottles alike.</summary>
internal static class SupplyWords
{
    /// <summary>What is in the bottle under the rules that apply.</summary>
    internal static HazardAssessment Hazards(Workbench bench, Bottle bottle) => Hazards(bench, bench.Catalog.SolventOf(bottle.Solvent));

    /// <summary>What an alcohol is under the rules that apply.</summary>
    internal static HazardAssessment Hazards(Workbench bench, Solvent solvent) =>
        MixtureClassifier.Classify(JarComposition.Possible([(solvent, Mass.FromKilograms(1))], Mass.Zero, bench.Catalog), bench.Rules, bench.Catalog).PouredFrom([solvent]);

    /// <summary>The bottle as a store of flammable liquid counts it.</summary>
    internal static StockedLiquid Liquid(Workbench bench, Bottle bottle) => new(
        Hazards(bench, bottle), bottle.Left, bottle.Left * bench.Catalog.SolventOf(bottle.Solvent).DensityAt(Warmth.Reference))
    { IsBottle = true };

    /// <summary>Shop and contact, the most telling wording first.</summary>
    internal static IReadOnlyList<string> Owner(Workbench bench)
    {
        var (name, contact) = (bench.Settings.Name, bench.Settings.Contact);
        return [.. ((string?[])[name is not null && contact is not null ? $"{name} · {contact}" : null, name, contact]).OfType<string>().Distinct(StringComparer.Ordinal)];
    }
}
