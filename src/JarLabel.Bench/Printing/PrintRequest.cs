namespace JarLabel.Bench.Printing;

/// <summary>That what a step writes is to go to a printer too.</summary>
/// <param name="To">The printer, as typed.</param>
/// <param name="Sheet">The stock's id; null for the shop's usual one.</param>
/// <param name="Design">The design's id; null for the stock's usual one.</param>
/// <param name="Start">The place it begins at; null for the next free one.</param>
public sealed record PrintRequest(string To, string? Sheet = null, string? Design = null, int? Start = null)
{
    /// <summary>Where the printer was named.</summary>
    public string Where { get; init; } = "print-to";
}
