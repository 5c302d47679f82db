namespace JarLabel.Core.Hazards;

/// <summary>Limits of the sums that belong to no single class. Those of the classes stand in the catalog beside them.</summary>
internal static class MixtureLimits
{
    /// <summary>An ingredient of unknown acute toxicity counts from this share, percent by weight (CLP Annex I 3.1.3.6.2.2; 29 CFR 1910.1200 A.1.3.6.2.2).</summary>
    internal const decimal UnknownCountsFrom = 1;

    /// <summary>More than this of unknown acute toxicity changes the sum (CLP Annex I 3.1.3.6.2.3; 29 CFR 1910.1200 A.1.3.6.2.4).</summary>
    internal const decimal MuchUnknown = 10;
}
