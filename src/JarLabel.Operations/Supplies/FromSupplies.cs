namespace JarLabel.Operations.Supplies;

/// <summary>The bag and the bottle that a step is worked from.</summary>
/// <param name="Bag">The bag, or null when nobody said.</param>
/// <param name="Bottle">The bottle, or null when nobody said.</param>
internal sealed record FromSupplies(Bag? Bag, Bottle? Bottle)
{
    /// <summary>Looks them up; a problem where one is not there.</summary>
    internal static Result<FromSupplies> Of(Workbench bench, SupplyNumber? bag, SupplyNumber? bottle)
    {
        var problems = new List<Problem>();
        var found = new FromSupplies(
            Found(bag, number => SupplyBook.Bag(bench, number).Then(b => b.AsAt(bench.Now)).Then(b => b.DemandOnHand("bag")).Then(b => b.DemandFit()).Then(b => SupplyFit.Made(b, DateOnly.FromDateTime(bench.Now)))),
            Found(bottle, number => SupplyBook.Bottle(bench, number).Then(b => b.AsAt(bench.Now)).Then(b => b.DemandOnHand("bottle"))));
        return problems.Count == 0 ? found : Result<FromSupplies>.Failed(problems);

        T? Found<T>(SupplyNumber? number, Func<SupplyNumber, Result<T>> find)
            where T : class
        {
            if (number is not { } named)
            {
                return null;
            }

            var result = find(named);
            problems.AddRange(result.Problems);
            return result.TryGet(out var one, out _) ? one : null;
        }
    }

    /// <summary>The date of the flakes: that of the bag, which nobody says otherwise beside it.</summary>
    /// <param name="said">What was said of it; null for nothing.</param>
    internal Result<FromSupplies> Dated(DateOnly? said) => Bag is { } bag && said is { } day ? SupplyFit.Dated(bag, day).Then<FromSupplies>(_ => this) : this;

    /// <summary>The same when the bag holds that grade and the bottle that alcohol; else what they hold.</summary>
    internal Result<FromSupplies> Demand(ShopCatalog catalog, string? grade, string? solvent)
    {
        Problem[] problems =
        [
            .. Bag is null || grade is null ? [] : SupplyFit.Demand(Bag, grade, catalog).Problems,
            .. Bottle is null || solvent is null ? [] : SupplyFit.Demand(Bottle, solvent, catalog).Problems,
        ];
        return problems.Length == 0 ? this : Result<FromSupplies>.Failed(problems);
    }
}
