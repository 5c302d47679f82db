namespace JarLabel.Store.Exchange;

/// <summary>What an import did.</summary>
/// <param name="Added">Events that were new.</param>
/// <param name="Known">Events that the ledger had already, the same to the last sign.</param>
public sealed record ImportReport(long Added, long Known);
