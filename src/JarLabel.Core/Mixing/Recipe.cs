namespace JarLabel.Core.Mixing;

/// <summary>A batch, solved. Everything follows from the solvent poured, the flakes and the solvent's density at the bench.</summary>
/// <param name="Cut">Flakes per solvent poured.</param>
/// <param name="Flakes">Flakes to weigh.</param>
/// <param name="Pour">Solvent to pour first.</param>
/// <param name="SolventDensity">Of the solvent at the bench temperature.</param>
public sealed record Recipe(PoundCut Cut, Mass Flakes, Volume Pour, Density SolventDensity)
{
    /// <summary>What the solvent weighs: pour it on a scale instead of measuring it.</summary>
    public Mass PourWeight => Pour * SolventDensity;

    /// <summary>Finished liquid.</summary>
    public Volume Makes => Shellac.MadeFrom(Pour, Cut);

    /// <summary>Weight of the finished liquid.</summary>
    public Mass MakesWeight => PourWeight + Flakes;

    /// <summary>Shellac as a fraction of the whole weight.</summary>
    public double SolidsByWeight => Flakes / MakesWeight;

    /// <summary>Shellac as a fraction of the whole volume.</summary>
    public double SolidsByVolume => Shellac.VolumeOf(Flakes) / Makes;

    /// <summary>Flakes in a volume of the finished liquid (less than the cut, which counts the solvent alone).</summary>
    public MassConcentration FlakesInLiquid => MassConcentration.FromGramsPerLiter((Flakes / Makes).GramsPerLiter);

    /// <summary>Weight of a volume of the finished liquid.</summary>
    public Density LiquidDensity => MakesWeight / Makes;
}
