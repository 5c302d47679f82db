using JarLabel.Core.Mixing;
using JarLabel.Core.Quantities;
using UnitsNet;

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
