namespace JarLabel.Store.Exchange;

/// <summary>Which backup is to come into the ledger's place.</summary>
/// <param name="File">The backup.</param>
/// <param name="Now">The moment, for the name of what is moved aside.</param>
/// <param name="Force">True to put it in the place of a ledger that is in order, too.</param>
/// <param name="DryRun">True to check all and move nothing.</param>
public sealed record RestoreWish(string File, DateTime Now, bool Force = false, bool DryRun = false);
