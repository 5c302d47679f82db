namespace JarLabel.Core.Jars;

/// <summary>The jar's beginning: a batch was mixed into it.</summary>
/// <param name="At">The moment at the bench.</param>
/// <param name="Contents">What went in.</param>
/// <param name="Container">The jar it went into.</param>
/// <param name="Dates">Ready, test-from and use-by as estimated then. They stay as they were said.</param>
/// <param name="Shelf">Where the jar stands.</param>
/// <param name="Bench">Temperature at the bench, stored in °C.</param>
/// <param name="By">Who mixed it.</param>
/// <param name="Job">What it is for.</param>
/// <param name="Note">Anything else.</param>
public sealed record Mixed(
    DateTime At,
    Contents Contents,
    Container Container,
    KeepingDates Dates,
    string Shelf,
    [property: JsonPropertyName("benchCelsius")] Temperature Bench,
    string? By = null,
    string? Job = null,
    string? Note = null) : JarEvent(At), IBeginning
{
    DateTime IBeginning.MixedAt => At;

    TestResult? IBeginning.Test => null;

    /// <summary>The bag that the flakes came from, where that was said.</summary>
    public SupplyNumber? Bag { get; init; }

    /// <summary>The bottle that the alcohol came from, where that was said.</summary>
    public SupplyNumber? Bottle { get; init; }

    /// <inheritdoc/>
    [JsonIgnore]
    public override bool ChangesContents => true;
}
