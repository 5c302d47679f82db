namespace JarLabel.Core.Supplies;

/// <summary>How far a bench may read a bag's or bottle's last bit off: half a percent, as for a jar.</summary>
internal static class SupplyReading
{
    /// <summary>The most that may be asked for of what is left.</summary>
    internal const double Most = 1.005;

    /// <summary>From this part of what is left on it is all.</summary>
    internal const double Least = 0.995;
}
