namespace JarLabel.Operations.Supplies;

/// <summary>What a step at a jar takes from a bag and a bottle, and what taking the step back puts back.</summary>
internal static class StockWithdrawal
{
    /// <summary>Takes what the event says it took; nothing when it names no bag and no bottle. What is in them is asked again here, where no
    /// other program can take from them meanwhile.</summary>
    /// <returns>What should be known of them.</returns>
    internal static Result<IReadOnlyList<Problem>> Take(LedgerStep step, JarNumber jar, JarEvent happened)
    {
        var cautions = new List<Problem>();
        foreach (var (kind, number, amount) in Of(happened))
        {
            if (!SupplyBook.Find(step, kind, number).Then(found => found.AsAt(happened.At)).Then(found => found.DemandOnHand(kind.Word())).Then(found => found.DemandFit()).TryGet(out var supply, out var faults))
            {
                return faults;
            }

            if (supply.Take(happened.At, amount, jar) is not { } taken)
            {
                return OperationProblems.TakenMeanwhile(kind.Word(), number);
            }

            SupplyBook.Append(step, SupplyBook.Subject(kind, number), taken);
            cautions.AddRange(SupplyFit.Bought(supply, DateOnly.FromDateTime(happened.At)));
            if (supply.IsMeasuredSince(happened.At) && SupplyBook.Find(step, kind, number).TryGet(out var after, out _))
            {
                cautions.Add(SupplyFit.Measured(after));
            }
        }

        return cautions;
    }

    /// <summary>Puts back what the event took, because it is taken back.</summary>
    /// <returns>The bags and bottles as they are then, and what should be known of them.</returns>
    internal static Result<IReadOnlyList<(Supply Supply, IReadOnlyList<Problem> Cautions)>> PutBack(LedgerStep step, JarNumber jar, JarEvent undone, DateTime at) => Results.All(Of(undone).Select(from =>
        SupplyBook.Find(step, from.Kind, from.Number).Then(before =>
        {
            SupplyBook.Append(step, SupplyBook.Subject(from.Kind, from.Number), new PutBack(at, jar));
            return SupplyBook.Find(step, from.Kind, from.Number).Then<(Supply, IReadOnlyList<Problem>)>(after => (after, after.Measured is not null && after.Rest <= before.Rest ? [SupplyFit.Measured(after)] : []));
        })));

    /// <summary>Where the event took something from, and how much in grams or millilitres.</summary>
    private static IEnumerable<(SupplyKind Kind, SupplyNumber Number, double Amount)> Of(JarEvent happened)
    {
        var (bag, flakes, bottle, alcohol) = happened switch
        {
            Mixed m => (m.Bag, m.Contents.Flakes, m.Bottle, m.Contents.Poured),
            Thinned t => (null, Mass.Zero, t.Bottle, t.Added.Poured),
            Thickened t => (t.Bag, t.Added.Weight, null, Volume.Zero),
            _ => default((SupplyNumber? Bag, Mass, SupplyNumber? Bottle, Volume)),
        };
        if (bag is { } from)
        {
            yield return (SupplyKind.Bag, from, flakes.Grams);
        }

        if (bottle is { } of)
        {
            yield return (SupplyKind.Bottle, of, alcohol.Milliliters);
        }
    }
}
