namespace JarLabel.Store;

/// <summary>One event as the ledger keeps it, its contents opaque. Once recorded it is never changed and never removed.</summary>
/// <param name="Sequence">The place in the ledger: 1, 2, 3 ... without a gap.</param>
/// <param name="Of">What it happened to.</param>
/// <param name="At">The moment at the bench, ISO 8601 local without an offset: <c>2026-03-09T14:30:00</c>.</param>
/// <param name="Kind">The event's name, such as <c>Mixed</c>.</param>
/// <param name="Revision">The subject's revision after the event; 0 or more.</param>
/// <param name="Body">The event itself: one JSON object on one line, kept byte for byte.</param>
public sealed record EventRow(long Sequence, Subject Of, string At, string Kind, int Revision, string Body);
