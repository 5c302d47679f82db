namespace JarLabel.Core.Jars;

/// <summary>One fact in the life of a jar. Facts are only ever added; what a jar is now is the fold of them. The family is closed: the
/// ledger keeps each under its name, and an unknown name is a problem.</summary>
/// <param name="At">The moment at the bench, local time.</param>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "event")]
[JsonDerivedType(typeof(Mixed), nameof(Mixed))]
[JsonDerivedType(typeof(Blended), nameof(Blended))]
[JsonDerivedType(typeof(Decanted), nameof(Decanted))]
[JsonDerivedType(typeof(Thinned), nameof(Thinned))]
[JsonDerivedType(typeof(Thickened), nameof(Thickened))]
[JsonDerivedType(typeof(PouredOut), nameof(PouredOut))]
[JsonDerivedType(typeof(Used), nameof(Used))]
[JsonDerivedType(typeof(Tested), nameof(Tested))]
[JsonDerivedType(typeof(Moved), nameof(Moved))]
[JsonDerivedType(typeof(Redated), nameof(Redated))]
[JsonDerivedType(typeof(Noted), nameof(Noted))]
[JsonDerivedType(typeof(Labelled), nameof(Labelled))]
[JsonDerivedType(typeof(Discarded), nameof(Discarded))]
[JsonDerivedType(typeof(Undone), nameof(Undone))]
public abstract record JarEvent(DateTime At)
{
    /// <summary>The event's name in the ledger: <c>Mixed</c>.</summary>
    [JsonIgnore]
    public string Name => GetType().Name;

    /// <summary>True when the jar holds something else afterwards, so that an older label is out of date.</summary>
    [JsonIgnore]
    public virtual bool ChangesContents => false;
}

/// <summary>The jar is gone.</summary>
/// <param name="At">The moment.</param>
/// <param name="Why">Why, where somebody said.</param>
public sealed record Discarded(DateTime At, string? Why = null) : JarEvent(At);

/// <summary>A label for the jar was written.</summary>
/// <param name="At">The moment.</param>
/// <param name="Revision">The revision the label speaks of.</param>
/// <param name="File">The file written, by its name in the shop's label folder or as the user gave it.</param>
/// <param name="Design">The design's id.</param>
/// <param name="Sheet">The sheet's id.</param>
/// <param name="Position">The place on the sheet, from 1.</param>
/// <param name="Payload">What its code says.</param>
public sealed record Labelled(DateTime At, int Revision, string File, string Design, string Sheet, int Position, string Payload) : JarEvent(At)
{
    /// <summary>SHA-256 of the file, 64 lower-case hexadecimal digits.</summary>
    public string? Sha256 { get; init; }

    /// <summary>The id of the jar card's design.</summary>
    public const string Card = "card";

    /// <summary>True for what sticks on the glass; a card is pinned up beside it, and the label on the glass stays as it was.</summary>
    [JsonIgnore]
    public bool IsOnGlass => Design != Card;

    /// <summary>How many were printed, when more than one; they run on from <see cref="Position"/>.</summary>
    public int? Copies { get; init; }
}

/// <summary>The jar went to another shelf.</summary>
/// <param name="At">The moment.</param>
/// <param name="Shelf">Where it stands now.</param>
/// <param name="Dates">The dates from then on, where a warmer or cooler shelf changes them; null when they stay.</param>
public sealed record Moved(DateTime At, string Shelf, KeepingDates? Dates = null) : JarEvent(At)
{
    /// <summary>True where the dates on the label are no longer true.</summary>
    [JsonIgnore]
    public override bool ChangesContents => Dates is not null;
}

/// <summary>Somebody wrote something down.</summary>
/// <param name="At">The moment.</param>
/// <param name="Text">What.</param>
public sealed record Noted(DateTime At, string Text) : JarEvent(At);

/// <summary>A part, or all, was poured into another jar. What is left is the same liquid, so its label stays true.</summary>
/// <param name="At">The moment.</param>
/// <param name="Taken">What went.</param>
/// <param name="To">The jar it went into.</param>
public sealed record PouredOut(DateTime At, Contents Taken, JarNumber To) : JarEvent(At);

/// <summary>The jar got other dates, because the shop's drying tests say something else of its class than when it was dated, or because its shelf became
/// warmer or cooler or the shop settled anew how jars keep. Labels that tell the old ones are out of date.</summary>
/// <param name="At">The moment.</param>
/// <param name="Dates">The dates from then on.</param>
public sealed record Redated(DateTime At, KeepingDates Dates) : JarEvent(At)
{
    /// <summary>The shelf that became warmer or cooler, where that is why; else null.</summary>
    public string? Shelf { get; init; }

    /// <summary>The setting that was changed, where that is why; else null. Where neither is, drying tests are.</summary>
    public string? Setting { get; init; }

    /// <summary>Stands in place of a setting where its flakes were found to be going off.</summary>
    public const string OfFlakes = "flakes";

    /// <summary>Stands there where that was taken back.</summary>
    public const string OfSoundFlakes = "flakes-sound";

    /// <summary>The new dates of a jar that differ by what is known now.</summary>
    /// <param name="at">The moment.</param>
    /// <param name="jar">The jar as it is known.</param>
    /// <param name="dates">The dates from then on.</param>
    public static Redated Known(DateTime at, Jar jar, KeepingDates dates) => new(at, dates) { Setting = jar.Doubts.Shortened ? OfFlakes : jar.FlakesCleared ? OfSoundFlakes : null };

    /// <inheritdoc/>
    [JsonIgnore]
    public override bool ChangesContents => true;
}

/// <summary>A few drops were let dry on glass.</summary>
/// <param name="At">The moment.</param>
/// <param name="Passed">True when they dried hard.</param>
/// <param name="DryMinutes">How long that took, where somebody looked at the clock.</param>
public sealed record Tested(DateTime At, bool Passed, int? DryMinutes = null) : JarEvent(At)
{
    /// <summary>How they dried, where more was said than whether they did.</summary>
    public Drying? Dried { get; init; }

    /// <summary>What was read at the bench; null when nothing was.</summary>
    public DropReadings? Readings { get; init; }

    /// <summary>How they dried, as far as was said.</summary>
    [JsonIgnore]
    public Drying HowDried => !Passed ? Drying.Soft : Dried ?? Drying.Hard;
}

/// <summary>Flakes were added.</summary>
/// <param name="At">The moment.</param>
/// <param name="Added">What was put in.</param>
/// <param name="Dates">The jar's dates from then on: ready once the new flakes are dissolved, the rest no later than before.</param>
/// <param name="Container">The larger jar it all went into; null when it stayed in its own.</param>
public sealed record Thickened(DateTime At, ResinPart Added, KeepingDates Dates, Container? Container = null) : JarEvent(At)
{
    /// <summary>The bag that the flakes came from, where that was said.</summary>
    public SupplyNumber? Bag { get; init; }

    /// <inheritdoc/>
    [JsonIgnore]
    public override bool ChangesContents => true;
}

/// <summary>Solvent was added. The dates stay: thinning makes nothing younger.</summary>
/// <param name="At">The moment.</param>
/// <param name="Added">What was poured in.</param>
/// <param name="Container">The larger jar it all went into; null when it stayed in its own.</param>
public sealed record Thinned(DateTime At, SolventPart Added, Container? Container = null) : JarEvent(At)
{
    /// <summary>The bottle that the alcohol came from, where that was said.</summary>
    public SupplyNumber? Bottle { get; init; }

    /// <inheritdoc/>
    [JsonIgnore]
    public override bool ChangesContents => true;
}

/// <summary>The last event that still stood was taken back: the jar is as it was before it. Labels are paper and are not taken back.</summary>
/// <param name="At">The moment.</param>
/// <param name="What">The name of the event that was taken back.</param>
/// <param name="Changes">True when that event had made older labels out of date; those printed since it are now.</param>
public sealed record Undone(DateTime At, string What, bool Changes) : JarEvent(At)
{
    /// <inheritdoc/>
    [JsonIgnore]
    public override bool ChangesContents => Changes;
}

/// <summary>A part, or all, was used. What is left is the same liquid, so its label stays true.</summary>
/// <param name="At">The moment.</param>
/// <param name="Taken">What went.</param>
/// <param name="Job">What it went to.</param>
public sealed record Used(DateTime At, Contents Taken, string? Job = null) : JarEvent(At);
