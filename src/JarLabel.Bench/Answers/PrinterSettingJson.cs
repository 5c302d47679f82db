namespace JarLabel.Bench.Answers;

/// <summary>A printer that the shop has named.</summary>
internal sealed record PrinterSettingJson(string Name, string Uri);
