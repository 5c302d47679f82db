namespace JarLabel.Operations.Supplies;

/// <summary>What a step at a jar takes from a bag and a bottle, and what taking the step back puts back.</summary>
internal static class StockWithdrawal
{
    /// <summary>Takes what the event says it took; nothing when it names no bag and no bottle. What is in them is asked again here, where no
    /// other program can take from them meanwhile.</summary>
    internal static Result<JarNumber> Take(LedgerStep step, JarNumber jar, JarEvent happened)
    {
        foreach (var (kind, number, amount) in Of(happened))
        {
            if (!SupplyBook.Find(step, kind, number).Then(supply => supply.DemandOnHand(kind.Word())).Then(supply => supply.DemandFit()).TryGet(out var supply, out var faults))
            {
                return faults;
            }

            if (supply.Take(happened.At, amount, jar) is not { } taken)
            {
                return OperationProblems.TakenMeanwhile(kind.Word(), number);
            }

            SupplyBook.Append(step, SupplyBook.Subject(kind, number), taken);
        }

        return jar;
    }

    /// <summary>Puts back what the event took, because it is taken back.</summary>
    /// <returns>The bags and bottles as they are then.</returns>
    internal static Result<IReadOnlyList<Supply>> PutBack(LedgerStep step, JarNumber jar, JarEvent undone, DateTime at) => Results.All(Of(undone).Select(from =>
    {
        SupplyBook.Append(step, SupplyBook.Subject(from.Kind, from.Number), new PutBack(at, jar));
        return SupplyBook.Find(step, from.Kind, from.Number);
    }));

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
