namespace JarLabel.Store.Exchange;

/// <summary>An export that was written.</summary>
/// <param name="File">Where it is.</param>
/// <param name="Events">How many events it holds.</param>
public sealed record ExportReport(string File, long Events);
