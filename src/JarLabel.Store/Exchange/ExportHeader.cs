namespace JarLabel.Store.Exchange;

/// <summary>The first line of an export.</summary>
/// <param name="LedgerId">Whose events they are.</param>
/// <param name="Events">How many follow.</param>
/// <param name="Seal">The seal of the last one.</param>
internal sealed record ExportHeader(string LedgerId, long Events, string Seal);
