namespace JarLabel.Core.Planning;

/// <summary>One part of a job: so many coats of one cut over an area.</summary>
/// <param name="Kind">How it is put on.</param>
/// <param name="Area">What is covered.</param>
/// <param name="Coats">How many times.</param>
/// <param name="Cut">The cut.</param>
/// <param name="WetCoat">Thickness of one wet coat, from the spread.</param>
/// <param name="Waste">What is lost, as a part of what comes onto the wood: 0 to 3.</param>
public sealed record JobLine(JobKind Kind, Area Area, int Coats, PoundCut Cut, Length WetCoat, double Waste)
{
    /// <summary>How far a coat spreads unless said: 400 sq ft a gallon, the middle of what is quoted, with low confidence.</summary>
    public const string UsualSpread = "400 sqft/gal";

    /// <summary>The most coats of one line, and the most waste.</summary>
    public const int MostCoats = 1000, MostWaste = 3;

    /// <summary>Liquid that comes onto the wood, its flakes, and the dry film of a coat.</summary>
    public Coverage Coverage => Coverage.Of(Cut, Area, Coats, WetCoat);

    /// <summary>Liquid to have at hand, waste included.</summary>
    public Volume Needed => Coverage.Liquid * (1 + Waste);

    /// <summary>Alcohol that goes into the air with one coat; what is wasted dries too.</summary>
    public Volume EvaporatedPerCoat => Shellac.PouredIn(Needed, Cut) / Coats;
}

/// <summary>A way of putting shellac on, with what is usual for it. All are facts of the trade of low confidence; a plan may set its own.</summary>
/// <param name="Word">What people call it.</param>
/// <param name="UsualCut">The cut it is usually done with.</param>
/// <param name="UsualWaste">What stays in the pad, the brush, the cup or the air, as a part of what comes onto the wood.</param>
public sealed record JobKind(string Word, PoundCut UsualCut, double UsualWaste)
{
    /// <summary>Every kind, by its word. Of what is sprayed 35 to 75 % is lost (Dresdner, as quoted): the middle, 55 %, makes 2.2 times what comes
    /// onto the wood.</summary>
    public static IReadOnlyDictionary<string, JobKind> ByWord { get; } = new JobKind[]
    {
        new("wash", PoundCut.FromPoundsPerUsGallon(1), 0.10),
        new("seal", PoundCut.FromPoundsPerUsGallon(1), 0.10),
        new("pad", PoundCut.FromPoundsPerUsGallon(1.5), 0.15),
        new("brush", PoundCut.FromPoundsPerUsGallon(1.5), 0.15),
        new("spray", PoundCut.FromPoundsPerUsGallon(3), 1.20),
    }.ToDictionary(k => k.Word, StringComparer.OrdinalIgnoreCase);
}
