using JarLabel.Core.Quantities;

namespace JarLabel.Core.Planning;

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
