namespace JarLabel.Core.Supplies;

/// <summary>One fact in the life of a bag of flakes or a bottle of alcohol. Facts are only ever added. The family is closed: the ledger
/// keeps each under its name, and an unknown name is a problem.</summary>
/// <param name="At">The moment at the bench, local time.</param>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "event")]
[JsonDerivedType(typeof(BagAdded), nameof(BagAdded))]
[JsonDerivedType(typeof(BottleAdded), nameof(BottleAdded))]
[JsonDerivedType(typeof(FlakesTaken), nameof(FlakesTaken))]
[JsonDerivedType(typeof(SolventTaken), nameof(SolventTaken))]
[JsonDerivedType(typeof(PutBack), nameof(PutBack))]
[JsonDerivedType(typeof(FlakesLeft), nameof(FlakesLeft))]
[JsonDerivedType(typeof(FlakesTested), nameof(FlakesTested))]
[JsonDerivedType(typeof(SolventLeft), nameof(SolventLeft))]
[JsonDerivedType(typeof(BottleMoved), nameof(BottleMoved))]
[JsonDerivedType(typeof(SupplyLabelled), nameof(SupplyLabelled))]
[JsonDerivedType(typeof(SupplyDiscarded), nameof(SupplyDiscarded))]
[JsonDerivedType(typeof(SupplyUndone), nameof(SupplyUndone))]
public abstract record SupplyEvent(DateTime At)
{
    /// <summary>The event's name in the ledger: <c>BagAdded</c>.</summary>
    [JsonIgnore]
    public string Name => GetType().Name;
}

/// <summary>A bag of flakes came into the shop.</summary>
/// <param name="At">The moment.</param>
/// <param name="Grade">The grade's id.</param>
/// <param name="Weight">What it holds, stored in grams.</param>
/// <param name="Made">When the flakes were made or bought: their age counts from it.</param>
/// <param name="Note">Anything else.</param>
public sealed record BagAdded(DateTime At, string Grade, [property: JsonPropertyName("grams")] Mass Weight, DateOnly Made, string? Note = null) : SupplyEvent(At);

/// <summary>A bottle, can or drum of alcohol came into the shop.</summary>
/// <param name="At">The moment.</param>
/// <param name="Solvent">The solvent's id.</param>
/// <param name="Volume">What it holds, stored in millilitres.</param>
/// <param name="Bought">When it was bought or opened.</param>
/// <param name="Shelf">Where it stands.</param>
/// <param name="Material">What it is made of; null when nobody said.</param>
/// <param name="Note">Anything else.</param>
public sealed record BottleAdded(
    DateTime At,
    string Solvent,
    [property: JsonPropertyName("milliliters")] Volume Volume,
    DateOnly Bought,
    string Shelf,
    ContainerMaterial? Material = null,
    string? Note = null) : SupplyEvent(At);

/// <summary>The bottle stands elsewhere.</summary>
/// <param name="At">The moment.</param>
/// <param name="Shelf">Where.</param>
public sealed record BottleMoved(DateTime At, string Shelf) : SupplyEvent(At);

/// <summary>The bag was weighed; what the scale says holds from then on.</summary>
/// <param name="At">The moment.</param>
/// <param name="Weight">What is left, stored in grams.</param>
public sealed record FlakesLeft(DateTime At, [property: JsonPropertyName("grams")] Mass Weight) : SupplyEvent(At), IReading
{
    double IReading.Size => Weight.Grams;
}

/// <summary>Flakes went from the bag into a jar.</summary>
/// <param name="At">The moment.</param>
/// <param name="Weight">How much, stored in grams.</param>
/// <param name="For">The jar.</param>
public sealed record FlakesTaken(DateTime At, [property: JsonPropertyName("grams")] Mass Weight, JarNumber For) : SupplyEvent(At), ITaking
{
    double ITaking.Size => Weight.Grams;

    JarNumber ITaking.Jar => For;
}

/// <summary>A pinch of the bag's flakes was left in a little alcohol to dissolve.</summary>
/// <param name="At">The moment, when it was looked at.</param>
/// <param name="Pinch">What became of it.</param>
public sealed record FlakesTested(DateTime At, Pinch Pinch) : SupplyEvent(At);

/// <summary>The step that last took from here for a jar was taken back: it never happened, so what it took is here again, unless it was
/// measured since.</summary>
/// <param name="At">The moment.</param>
/// <param name="From">The jar.</param>
public sealed record PutBack(DateTime At, JarNumber From) : SupplyEvent(At);

/// <summary>What is left in the bottle was measured; it holds from then on.</summary>
/// <param name="At">The moment.</param>
/// <param name="Volume">What is left, stored in millilitres.</param>
public sealed record SolventLeft(DateTime At, [property: JsonPropertyName("milliliters")] Volume Volume) : SupplyEvent(At), IReading
{
    double IReading.Size => Volume.Milliliters;
}

/// <summary>Alcohol went from the bottle into a jar.</summary>
/// <param name="At">The moment.</param>
/// <param name="Volume">How much, stored in millilitres.</param>
/// <param name="For">The jar.</param>
public sealed record SolventTaken(DateTime At, [property: JsonPropertyName("milliliters")] Volume Volume, JarNumber For) : SupplyEvent(At), ITaking
{
    double ITaking.Size => Volume.Milliliters;

    JarNumber ITaking.Jar => For;
}

/// <summary>The bag or bottle left the shop.</summary>
/// <param name="At">The moment.</param>
/// <param name="Why">Why, where somebody said.</param>
public sealed record SupplyDiscarded(DateTime At, string? Why = null) : SupplyEvent(At);

/// <summary>A label for the bag or bottle was written.</summary>
/// <param name="At">The moment.</param>
/// <param name="File">The file written, by its name in the shop's label folder or as the user gave it.</param>
/// <param name="Design">The design's id.</param>
/// <param name="Sheet">The sheet's id.</param>
/// <param name="Position">The place on the sheet, from 1.</param>
/// <param name="Payload">What its code says.</param>
public sealed record SupplyLabelled(DateTime At, string File, string Design, string Sheet, int Position, string Payload) : SupplyEvent(At)
{
    /// <summary>SHA-256 of the file, 64 lower-case hexadecimal digits.</summary>
    public string? Sha256 { get; init; }
}

/// <summary>The last step at the bag or bottle that still stood was taken back. Labels are paper, and what a jar took is taken back at the jar.</summary>
/// <param name="At">The moment.</param>
/// <param name="What">The name of the event that was taken back.</param>
public sealed record SupplyUndone(DateTime At, string What) : SupplyEvent(At);
