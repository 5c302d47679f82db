using JarLabel.Core;

namespace JarLabel.Store.Exchange;

/// <summary>A backup that was checked and stands in the ledger's place.</summary>
/// <param name="File">The backup.</param>
/// <param name="Ledger">The ledger it is now.</param>
/// <param name="LedgerId">Whose it is.</param>
/// <param name="Events">How many events it holds.</param>
/// <param name="Aside">What stood there before, under the names it is kept by.</param>
/// <param name="Cautions">Numbers that were given out and that the backup does not know of.</param>
public sealed record RestoreReport(string File, string Ledger, string LedgerId, long Events, IReadOnlyList<string> Aside, IReadOnlyList<Problem> Cautions);
