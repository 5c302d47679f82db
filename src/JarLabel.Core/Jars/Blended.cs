namespace JarLabel.Core.Jars;

/// <summary>The jar's beginning: other jars, or parts of them, were poured together into it.</summary>
/// <param name="At">The moment at the bench.</param>
/// <param name="Contents">What went in.</param>
/// <param name="Container">The jar it went into.</param>
/// <param name="Dates">The most cautious of its parts' dates.</param>
/// <param name="Shelf">Where the jar stands.</param>
/// <param name="MixedAt">When the oldest part was mixed.</param>
/// <param name="From">The jars it came from.</param>
/// <param name="By">Who blended it.</param>
/// <param name="Job">What it is for.</param>
/// <param name="Note">Anything else.</param>
/// <param name="Test">The test that holds for all parts.</param>
public sealed record Blended(
    DateTime At,
    Contents Contents,
    Container Container,
    KeepingDates Dates,
    string Shelf,
    DateTime MixedAt,
    IReadOnlyList<JarNumber> From,
    string? By = null,
    string? Job = null,
    string? Note = null,
    TestResult? Test = null) : JarEvent(At), IBeginning
{
    /// <inheritdoc/>
    [JsonIgnore]
    public override bool ChangesContents => true;
}
