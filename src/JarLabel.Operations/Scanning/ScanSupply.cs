namespace JarLabel.Operations.Scanning;

/// <summary>Finds the bag or bottle behind a label's code.</summary>
public static class ScanSupply
{
    /// <summary>The bag behind a code that <see cref="SupplyCode.Read"/> knows.</summary>
    public static Result<BagOutcome> Bag(Workbench bench, string typed, SupplyCode code)
    {
        return Demand(bench, typed, code).Then(_ => SupplyBook.Bag(bench, code.Number))
            .Then<BagOutcome>(bag => new BagOutcome(bag, null, bag.OnHand ? [] : [ScanProblems.SupplyGone(code)]));
    }

    /// <summary>The bottle behind a code that <see cref="SupplyCode.Read"/> knows.</summary>
    public static Result<BottleOutcome> Bottle(Workbench bench, string typed, SupplyCode code)
    {
        return Demand(bench, typed, code).Then(_ => SupplyBook.Bottle(bench, code.Number))
            .Then<BottleOutcome>(bottle => BottleDesk.Of(bench, bottle) with { Cautions = bottle.OnHand ? [] : [ScanProblems.SupplyGone(code)] });
    }

    /// <summary>A whole code must be one that this shop printed: another shop has a bag of the same number.</summary>
    private static Result<SupplyCode> Demand(Workbench bench, string typed, SupplyCode code) =>
        LedgerAccess.Read(bench, view => SupplyBook.Events(view, SupplyBook.Subject(code.Kind, code.Number))).Then<SupplyCode>(events =>
            events.Count == 0 || code.IsShort(typed) || events.Any(e => e is SupplyLabelled l && string.Equals(l.Payload, typed.Trim(), StringComparison.OrdinalIgnoreCase))
                ? code
                : ScanProblems.OtherShopsSupply(typed, code));
}
