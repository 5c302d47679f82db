using JarLabel.Core.Quantities;
using UnitsNet;

namespace JarLabel.Core.Mixing;

/// <summary>How much liquid a job takes and how thick it dries: geometry, and the spread that somebody gives.</summary>
/// <param name="Liquid">Finished liquid for all coats.</param>
/// <param name="DryCoat">Thickness of one dried coat.</param>
/// <param name="Flakes">Flakes in the liquid.</param>
public sealed record Coverage(Volume Liquid, Length DryCoat, Mass Flakes)
{
    /// <summary>The liquid, the dry coat and the flakes of a job.</summary>
    /// <param name="cut">The cut that is spread.</param>
    /// <param name="area">What is covered.</param>
    /// <param name="coats">How many times.</param>
    /// <param name="wetCoat">Thickness of one wet coat, from the spread.</param>
    public static Coverage Of(PoundCut cut, Area area, int coats, Length wetCoat)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(coats);
        var liquid = area * wetCoat * coats;
        var flakes = cut.FlakesFor(Shellac.PouredIn(liquid, cut));
        return new Coverage(liquid, wetCoat * (Shellac.VolumeOf(flakes) / liquid), flakes);
    }
}
