namespace JarLabel.Core.Catalog;

/// <summary>How a can states what is in it.</summary>
public enum Measure
{
    /// <summary>Percent of ethanol by volume at 20 °C, the rest water.</summary>
    Strength,

    /// <summary>Parts by volume, measured before they are poured together.</summary>
    Volume,

    /// <summary>Parts by weight.</summary>
    Weight,
}
