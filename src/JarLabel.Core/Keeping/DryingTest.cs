namespace JarLabel.Core.Keeping;

/// <summary>One drying test of a jar.</summary>
/// <param name="Age">The jar's age then, in days as at 20 °C.</param>
/// <param name="Dried">How the drops dried.</param>
public readonly record struct DryingTest(double Age, Drying Dried)
{
    /// <summary>A test of which only is known whether the drops dried hard.</summary>
    public DryingTest(double age, bool passed)
        : this(age, passed ? Drying.Hard : Drying.Soft)
    {
    }

    /// <summary>True when the drops dried hard.</summary>
    public bool Passed => Dried != Drying.Soft;
}
