namespace JarLabel.Core.Air;

/// <summary>A session of finishing as a person knows it: how much, how often, how thick.</summary>
/// <param name="Surface">What is coated.</param>
/// <param name="Coats">How many coats, at least 1.</param>
/// <param name="SpreadPerLiter">The surface that a litre of liquid covers once.</param>
/// <param name="Cut">The cut of the liquid.</param>
public sealed record FinishingSession(Area Surface, int Coats, Area SpreadPerLiter, PoundCut Cut)
{
    /// <summary>Finished liquid used.</summary>
    public Volume Liquid => Volume.FromLiters(Surface / SpreadPerLiter * Coats);

    /// <summary>The alcohol of it, all of which goes into the air.</summary>
    public Volume Evaporated => Shellac.PouredIn(Liquid, Cut);
}
