namespace JarLabel.Store.Exchange;

/// <summary>A backup that was written and read back, every seal checked.</summary>
/// <param name="File">Where it is.</param>
/// <param name="LedgerId">Whose it is.</param>
/// <param name="Events">How many events it holds.</param>
public sealed record BackupReport(string File, string LedgerId, long Events);
