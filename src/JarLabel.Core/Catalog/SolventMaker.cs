namespace JarLabel.Core.Catalog;

/// <summary>Reckons what cans say into percent by weight. A solvent may be made of other solvents.</summary>
internal sealed class SolventMaker(CatalogTable<Substance> substances, CatalogTable<SolventRow> rows)
{
    internal Solvent Make(SolventRow row) =>
        new(row.Id, row.Name, row.ShortName, row.Contains, new(() => Possible(row.Contains)), row.Note, row.Source)
        {
            Aliases = row.Aliases,
        };

    /// <summary>Everything it may be, the first one standing for weights and volumes.</summary>
    internal IReadOnlyList<Composition> Possible(IReadOnlyList<StatedContents> stated)
    {
        Composition[] all = [.. stated.SelectMany(Possible)];
        return stated.Count == 1 || all.All(c => !c.FromRanges) ? all : [.. all.Select(c => c.InDoubt())];
    }

    /// <summary>What one statement may be: where it gives ranges, a mixture in their middle and every corner.</summary>
    private IEnumerable<Composition> Possible(StatedContents stated)
    {
        if (stated.Measure == Measure.Strength)
        {
            return [WeighStrength(stated.Parts[0])];
        }

        IEnumerable<decimal[]> shares = stated.InRanges
            ? [RangeCorners.Middle(stated.Parts), .. RangeCorners.Of(stated.Parts)]
            : [[.. stated.Parts.Select(p => p.Parts)]];
        return shares.SelectMany(s => Weigh(stated, s));
    }

    /// <summary>Parts as they are, of liquids that may themselves be any of several.</summary>
    private Composition[] Weigh(StatedContents stated, decimal[] shares)
    {
        var known = true;
        IEnumerable<(Substance, decimal)>[] weighed = [[]];
        for (var i = 0; i < shares.Length; i++)
        {
            var (part, share) = (CompositionsOf(stated.Parts[i].Of), shares[i]);
            known &= part is [_] || part.All(c => c.FromRanges);
            weighed = [.. weighed.SelectMany(_ => part, (before, of) => before.Concat(Shares(of, share * (stated.Measure == Measure.Volume ? WeightOfOneVolume(of) : 1))))];
        }

        var ranged = known && (stated.InRanges || weighed.Length > 1);
        return [.. weighed.Select(w => Composition.FromWeights(w)).Select(c => ranged ? c.InRanges() : c)];
    }

    private Composition WeighStrength(Part stated)
    {
        var alcohol = substances.Require(stated.Of);
        var weight = alcohol.WithWater is { } measured
            ? (decimal)measured.PercentByWeight((double)stated.Parts)
            : 100 * (decimal)EthanolWater.MassFraction((double)stated.Parts);
        return Composition.FromWeights([(alcohol, weight), (substances.Require(Substance.WaterId), 100 - weight)]);
    }

    private static IEnumerable<(Substance Substance, decimal Weight)> Shares(Composition of, decimal weight) =>
        of.Ingredients.Select(i => (i.Substance, i.Percent * weight));

    private static decimal WeightOfOneVolume(Composition of) => (decimal)of.DensityAt(Temperature.FromDegreesCelsius(20)).KilogramsPerCubicMeter;

    private IReadOnlyList<Composition> CompositionsOf(string id) => substances.Find(id) is { } substance
        ? [Composition.FromWeights([(substance, 1)])]
        : Possible(rows.Require(id).Contains);
}
