namespace JarLabel.Operations.Supplies;

/// <summary>What a step at a jar takes from a bag and a bottle, and what taking the step back puts back.</summary>
internal static class StockWithdrawal
{
    /// <summary>Takes what the event says it took; nothing when it names no bag and no bottle. What is in them is asked again here, where no
    /// other program can take from them meanwhile.</summary>
    internal static Result<JarNumber> Take(LedgerStep step, JarNumber jar, JarEvent happened) => happened switch
    {
        Mixed m => Flakes(step, jar, m.At, m.Bag, m.Contents.Flakes).Then(_ => Alcohol(step, jar, m.At, m.Bottle, m.Contents.Poured)),
        Thinned t => Alcohol(step, jar, t.At, t.Bottle, t.Added.Poured),
        Thickened t => Flakes(step, jar, t.At, t.Bag, t.Added.Weight),
        _ => jar,
    };

    /// <summary>Puts back what the event took, because it is taken back.</summary>
    internal static void PutBack(LedgerStep step, JarNumber jar, JarEvent undone, DateTime at)
    {
        var (bag, bottle) = undone switch
        {
            Mixed m => (m.Bag, m.Bottle),
            Thinned t => (null, t.Bottle),
            Thickened t => (t.Bag, null),
            _ => ((SupplyNumber?)null, (SupplyNumber?)null),
        };
        Return(SupplyKind.Bag, bag);
        Return(SupplyKind.Bottle, bottle);

        void Return(SupplyKind kind, SupplyNumber? number)
        {
            if (number is { } known)
            {
                SupplyBook.Append(step, SupplyBook.Subject(kind, known), new PutBack(at, jar));
            }
        }
    }

    private static Result<JarNumber> Flakes(LedgerStep step, JarNumber jar, DateTime at, SupplyNumber? number, Mass weight) => number is not { } known
        ? jar
        : SupplyBook.Bag(step, known).Then(bag => bag.DemandOnHand("bag")).Then(bag => bag.DemandFit()).Then<JarNumber>(bag =>
        {
            if (bag.Take(at, weight, jar) is not { } taken)
            {
                return OperationProblems.TakenMeanwhile("bag", known);
            }

            SupplyBook.Append(step, Subject.Bag(known.Value), taken);
            return jar;
        });

    private static Result<JarNumber> Alcohol(LedgerStep step, JarNumber jar, DateTime at, SupplyNumber? number, Volume volume) => number is not { } known
        ? jar
        : SupplyBook.Bottle(step, known).Then(bottle => bottle.DemandOnHand("bottle")).Then<JarNumber>(bottle =>
        {
            if (bottle.Take(at, volume, jar) is not { } taken)
            {
                return OperationProblems.TakenMeanwhile("bottle", known);
            }

            SupplyBook.Append(step, Subject.Bottle(known.Value), taken);
            return jar;
        });
}
