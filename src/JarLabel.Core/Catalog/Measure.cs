namespace JarLabel.Core.Catalog;

/// <summary>How a can states what is in it.</summary>
public enum Measure
{
    /// <summary>Percent by volume at 20 °C of one alcohol, the rest water.</summary>
    Strength,

    /// <summary>Parts by volume, measured before they are poured together.</summary>
    Volume,

    /// <summary>Parts by weight.</summary>
    Weight,
}
