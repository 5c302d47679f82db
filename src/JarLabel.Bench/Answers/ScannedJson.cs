using JarLabel.Bench.Scanning;

namespace JarLabel.Bench.Answers;

/// <summary>A scanned label for a program; the revision is null when only a jar's number was typed.</summary>
internal sealed record ScannedJson(string Payload, int? Revision, bool OutOfDate)
{
    internal static ScannedJson Of(Scanned scanned) => new(scanned.Payload, scanned.Revision, scanned.OutOfDate);
}
