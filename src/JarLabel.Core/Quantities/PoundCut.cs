namespace JarLabel.Core.Quantities;

/// <summary>The strength of a shellac: pounds of flakes per US gallon of alcohol <em>poured</em>. It is not a concentration (which is per
/// volume of the finished liquid), so nothing converts it into one unasked. More than 0 and at most 12 lb; <c>default</c> is no cut at all.</summary>
/// <remarks>The definition of US Federal Specification TT-S-300A, 1.2: pounds of lac resin added to one US gallon of solvent.</remarks>
public readonly record struct PoundCut : IComparable<PoundCut>
{
    /// <summary>The strongest cut anyone mixes is 8 lb (ASTM D360); beyond 12 lb the flakes no longer dissolve.</summary>
    public const double Strongest = 12;

    /// <summary>The weakest cut that still is a finish, 1/100 lb.</summary>
    public const double Weakest = 0.01;

    /// <summary>What sums may leave over at the ends.</summary>
    private const double Hair = 1e-9;

    private PoundCut(double poundsPerGallon) => PoundsPerUsGallon = poundsPerGallon;

    /// <summary>Pounds of flakes per US gallon of solvent poured.</summary>
    public double PoundsPerUsGallon { get; }

    /// <summary>Grams of flakes per litre of solvent poured.</summary>
    public double GramsPerLiter => (Mass.FromPounds(PoundsPerUsGallon) / Volume.FromUsGallons(1)).GramsPerLiter;

    /// <summary>A cut in pounds per US gallon; throws outside 0.01 to 12.</summary>
    public static PoundCut FromPoundsPerUsGallon(double pounds)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(pounds, Weakest);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(pounds, Strongest);
        return new PoundCut(pounds);
    }

    /// <summary>The cut that comes of so much flake in so much poured solvent; null where it is no usable cut.</summary>
    public static PoundCut? Of(Mass flakes, Volume poured)
    {
        var pounds = flakes.Pounds / poured.UsGallons;
        return pounds is >= Weakest * (1 - Hair) and <= Strongest * (1 + Hair) ? new PoundCut(Math.Clamp(pounds, Weakest, Strongest)) : null;
    }

    /// <summary>The flakes that a volume of poured solvent needs.</summary>
    public Mass FlakesFor(Volume poured) => Mass.FromPounds(PoundsPerUsGallon * poured.UsGallons);

    /// <summary>The solvent that a weight of flakes needs.</summary>
    public Volume PourFor(Mass flakes) => Volume.FromUsGallons(flakes.Pounds / PoundsPerUsGallon);

    /// <inheritdoc/>
    public int CompareTo(PoundCut other) => PoundsPerUsGallon.CompareTo(other.PoundsPerUsGallon);

    /// <summary>Weaker.</summary>
    public static bool operator <(PoundCut left, PoundCut right) => left.CompareTo(right) < 0;

    /// <summary>Stronger.</summary>
    public static bool operator >(PoundCut left, PoundCut right) => left.CompareTo(right) > 0;

    /// <summary>Weaker or the same.</summary>
    public static bool operator <=(PoundCut left, PoundCut right) => left.CompareTo(right) <= 0;

    /// <summary>Stronger or the same.</summary>
    public static bool operator >=(PoundCut left, PoundCut right) => left.CompareTo(right) >= 0;
}
