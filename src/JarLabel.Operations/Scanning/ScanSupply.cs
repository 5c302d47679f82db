namespace JarLabel.Operations.Scanning;

/// <summary>Finds the bag or bottle behind a label's code.</summary>
public static class ScanSupply
{
    /// <summary>The bag or bottle behind a code that <see cref="SupplyCode.Read"/> knows.</summary>
    public static Result<SupplyOutcome> Find(Workbench bench, string typed, SupplyCode code)
    {
        return Demand(bench, typed, code).Then(_ => LedgerAccess.Read(bench, view => SupplyBook.Find(view, code.Kind, code.Number)
            .Then<SupplyOutcome>(supply => SupplyOperations.Of(bench, supply) with { Cautions = supply.OnHand ? SupplyOperations.OfContents(bench, view, supply) : [ScanProblems.SupplyGone(supply)] })));
    }

    /// <summary>A whole code must be one that this shop printed: another shop has a bag of the same number.</summary>
    private static Result<SupplyCode> Demand(Workbench bench, string typed, SupplyCode code) =>
        LedgerAccess.Read(bench, view => SupplyBook.Events(view, SupplyBook.Subject(code.Kind, code.Number))).Then<SupplyCode>(events =>
            events.Count == 0 || code.IsShort(typed) || events.Any(e => e is SupplyLabelled l && string.Equals(l.Payload, typed.Trim(), StringComparison.OrdinalIgnoreCase))
                ? code
                : ScanProblems.OtherShopsSupply(typed, code));
}
