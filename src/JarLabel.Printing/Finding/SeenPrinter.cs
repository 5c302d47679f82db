using JarLabel.Printing.Printers;

namespace JarLabel.Printing.Finding;

/// <summary>A printer that can be named in <c>--to</c>.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Uri">Its address.</param>
/// <param name="Model">What it is; null when unsaid.</param>
/// <param name="State">How it stands, in words; null when nobody asked it.</param>
/// <param name="How">How it came to be known.</param>
public sealed record SeenPrinter(string Name, string Uri, string? Model, string? State, SeenHow How)
{
    /// <summary>How a printer stands, in a few words.</summary>
    public static string StateOf(PrinterFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var ready = !facts.Accepts ? "takes no jobs" : facts.IsStopped ? "stands still" : facts.TakesPdf || facts.Formats.Count == 0 ? "ready" : "takes no PDF";
        return facts.Why is { } why ? $"{ready}: {why}" : ready;
    }
}
