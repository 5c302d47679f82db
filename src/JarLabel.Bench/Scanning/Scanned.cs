namespace JarLabel.Bench.Scanning;

/// <summary>The jar behind a code or a number.</summary>
/// <param name="Payload">What was read.</param>
/// <param name="Revision">The revision that the label speaks of; null when only a number was typed.</param>
/// <param name="Jar">The jar as it is now; its cautions say what is wrong with the label.</param>
public sealed record Scanned(string Payload, int? Revision, BenchOutcome Jar)
{
    /// <summary>True when the jar was changed after the label was printed.</summary>
    public bool OutOfDate => Revision < Jar.History.Jar.Revision;
}
