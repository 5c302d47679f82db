namespace JarLabel.Core.Catalog;

/// <summary>One published figure. Its unit is said by the member that holds it.</summary>
/// <param name="Value">The figure as it was printed.</param>
/// <param name="Source">Where it was printed: the id of a known source, a comma, the place in it; or <c>practice</c> or <c>memory</c>.</param>
public sealed record Figure(decimal Value, string Source)
{
    /// <summary>True when nobody has looked the figure up in its source: it must be shown as unverified.</summary>
    public bool Unverified => Sources.IsMemory(Source);
}
