namespace JarLabel.Layout;

/// <summary>What a label had no room for and the jar card shows instead.</summary>
/// <param name="Box">The box it would have stood in.</param>
/// <param name="Texts">The wordings.</param>
public sealed record Moved(string Box, IReadOnlyList<string> Texts);
