namespace JarLabel.Core.Jars;

/// <summary>The jar's beginning: a part of another jar was poured off into it. It keeps that jar's dates.</summary>
/// <param name="At">The moment at the bench.</param>
/// <param name="Contents">What went in.</param>
/// <param name="Container">The jar it went into.</param>
/// <param name="Dates">The dates of the jar it came from.</param>
/// <param name="Shelf">Where the jar stands.</param>
/// <param name="MixedAt">When the shellac was mixed.</param>
/// <param name="From">The jar it came from.</param>
/// <param name="By">Who mixed it.</param>
/// <param name="Job">What it is for.</param>
/// <param name="Note">Anything else.</param>
/// <param name="Test">The test of the jar it came from.</param>
/// <param name="Changed">What last changed the jar it came from.</param>
public sealed record Decanted(
    DateTime At,
    Contents Contents,
    Container Container,
    KeepingDates Dates,
    string Shelf,
    DateTime MixedAt,
    JarNumber From,
    string? By = null,
    string? Job = null,
    string? Note = null,
    TestResult? Test = null,
    LastChange? Changed = null) : JarEvent(At), IBeginning
{
    /// <inheritdoc/>
    [JsonIgnore]
    public override bool ChangesContents => true;
}
