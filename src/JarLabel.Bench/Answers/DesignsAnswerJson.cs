namespace JarLabel.Bench.Answers;

/// <summary>What <c>designs</c> says to a program.</summary>
/// <param name="Designs">The designs.</param>
/// <param name="File">The contact sheet; null where none was asked for.</param>
internal sealed record DesignsAnswerJson(IReadOnlyList<DesignJson> Designs, string? File);
