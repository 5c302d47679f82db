namespace JarLabel.Core.Mixing;

/// <summary>What dissolved shellac does to a volume: one pound of flakes takes up very nearly a tenth of a US gallon.</summary>
/// <remarks>27 CFR 21.80 and 21.161, denatured alcohol formula 45: 300 lb of refined shellac to 100 gallons make 129.8 gallons, (129.8 - 100) / 300 gal/lb.
/// The trade's chart rounds it to a tenth (Fine Woodworking, note to "Shellac Conversion Ratios": 2, 3 and 4 lb in one gallon make 1.2, about 1.3 and
/// 1.4 gallons); books give 0.095 to 0.116 gal/lb by grade and method. The apparent density that follows is 1.2067 g/mL.</remarks>
public static class Shellac
{
    /// <summary>US gallons taken up by one pound of dissolved flakes.</summary>
    public const double GallonsPerPound = 0.0993;

    /// <summary>The strongest cut that still brushes and strains well, in pounds a gallon, and that dissolves in the time usual for its flakes. Common practice; the
    /// standard's bodies end at 8 lb.</summary>
    private const double Syrup = 5;

    /// <summary>True for a cut that is a syrup.</summary>
    public static bool IsSyrup(PoundCut cut) => cut.PoundsPerUsGallon > Syrup;

    /// <summary>How many times as long as usual flakes take to dissolve in so strong a cut: in proportion, where it is a syrup. A judgement; no figure is published.</summary>
    public static double SlowerIn(PoundCut cut) => Math.Max(1, cut.PoundsPerUsGallon / Syrup);

    /// <summary>The volume that dissolved flakes take up.</summary>
    public static Volume VolumeOf(Mass flakes) => Volume.FromUsGallons(GallonsPerPound * flakes.Pounds);

    /// <summary>Finished liquid per part of solvent poured: 1 + v c.</summary>
    public static double Swelling(PoundCut cut) => 1 + (GallonsPerPound * cut.PoundsPerUsGallon);

    /// <summary>The solvent that was poured into so much finished liquid.</summary>
    public static Volume PouredIn(Volume liquid, PoundCut cut) => liquid / Swelling(cut);

    /// <summary>The finished liquid that so much poured solvent makes.</summary>
    public static Volume MadeFrom(Volume poured, PoundCut cut) => poured * Swelling(cut);
}
