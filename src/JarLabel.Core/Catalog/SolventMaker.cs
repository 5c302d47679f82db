using JarLabel.Core.Mixing;
using UnitsNet;

namespace JarLabel.Core.Catalog;

/// <summary>Reckons what cans say into percent by weight. A solvent may be made of other solvents.</summary>
internal sealed class SolventMaker(CatalogTable<Substance> substances, CatalogTable<SolventRow> rows)
{
    internal Solvent Make(SolventRow row) =>
        new(row.Id, row.Name, row.ShortName, row.Contains, new(() => [.. row.Contains.Select(Weigh)]), row.Note, row.Source)
        {
            Aliases = row.Aliases,
        };

    private Composition Weigh(StatedContents stated) => stated.Measure switch
    {
        Measure.Strength => WeighStrength(stated.Parts[0]),
        Measure.Volume => Composition.FromWeights(stated.Parts.SelectMany(p => Shares(p.Of, p.Parts * WeightOfOneVolume(p.Of)))),
        _ => Composition.FromWeights(stated.Parts.SelectMany(p => Shares(p.Of, p.Parts))),
    };

    private Composition WeighStrength(Part stated)
    {
        var alcohol = substances.Require(stated.Of);
        var weight = alcohol.WithWater is { } measured
            ? (decimal)measured.PercentByWeight((double)stated.Parts)
            : 100 * (decimal)EthanolWater.MassFraction((double)stated.Parts);
        return Composition.FromWeights([(alcohol, weight), (substances.Require(Substance.WaterId), 100 - weight)]);
    }

    private IEnumerable<(Substance Substance, decimal Weight)> Shares(string id, decimal weight) =>
        CompositionOf(id).Ingredients.Select(i => (i.Substance, i.Percent * weight));

    private decimal WeightOfOneVolume(string id) =>
        (decimal)CompositionOf(id).DensityAt(Temperature.FromDegreesCelsius(20)).KilogramsPerCubicMeter;

    private Composition CompositionOf(string id) => substances.Find(id) is { } substance
        ? Composition.FromWeights([(substance, 1)])
        : Make(rows.Require(id)).Composition;
}
