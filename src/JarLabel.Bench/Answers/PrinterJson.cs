namespace JarLabel.Bench.Answers;

/// <summary>A printer that <c>--to</c> can name.</summary>
internal sealed record PrinterJson(string Name, string Uri, string? Model, string? State, string Seen);
