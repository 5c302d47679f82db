namespace JarLabel.Operations.Typing;

/// <summary>Reads solids by weight, in percent.</summary>
internal static class SolidsText
{
    /// <summary>About a 2-lb cut in alcohol.</summary>
    private const double UsualPercent = 23;

    /// <summary>The solids there can be with this solvent: those of the weakest cut to those of the strongest.</summary>
    internal static Result<double> Read(string text, Density solvent, string where) => ValueReader.Percent(
        Math.Ceiling(1e4 * Solids.ByWeight(PoundCut.Weakest, solvent)) / 100, Math.Floor(1e3 * Solids.ByWeight(PoundCut.Strongest, solvent)) / 10, UsualPercent)(text, where);
}
