namespace JarLabel.Core.Catalog;

/// <summary>An alcohol as it is bought, with what is in it reckoned into weights.</summary>
/// <param name="Id">As typed: <c>ethanol-95</c>.</param>
/// <param name="Name">Full name.</param>
/// <param name="ShortName">Name for a small label.</param>
/// <param name="Stated">What the can says; more than one where it may be any of them.</param>
/// <param name="Weighed">The same in percent by weight, in the same order, reckoned when first asked for.</param>
/// <param name="Note">What a buyer should know.</param>
/// <param name="Source">Where the composition comes from.</param>
public sealed record Solvent(
    string Id,
    string Name,
    string ShortName,
    IReadOnlyList<StatedContents> Stated,
    Lazy<IReadOnlyList<Composition>> Weighed,
    string? Note,
    string Source)
    : CatalogRow(Id, Source)
{
    /// <summary>More water than this, percent by volume, and shellac dissolves badly and blushes. Common practice: 95 % alcohol is
    /// good, drugstore isopropyl of 91 % poor, 70 % useless.</summary>
    public const double TooWetAbove = 8;

    /// <summary>What it is in percent by weight; more than one where it may be any of them. The first one stands for weights and volumes.</summary>
    public IReadOnlyList<Composition> Compositions => Weighed.Value;

    /// <summary>False when nobody knows which of several it is: every rule then answers for the worst of <see cref="Compositions"/>, as it does
    /// within a data sheet's ranges.</summary>
    public bool CompositionKnown => Compositions is [_] || Compositions.All(c => c.FromRanges);

    /// <summary>The composition that weights and volumes are reckoned with.</summary>
    public Composition Composition => Compositions[0];

    /// <summary>Water, percent by volume at 20 °C.</summary>
    public double WaterPercentByVolume => Composition.WaterPercentByVolume();

    /// <summary>True when there is too much water for shellac.</summary>
    public bool TooWet => MostWaterPercentByVolume > TooWetAbove;

    /// <summary>The most water that it may hold, percent by volume at 20 °C.</summary>
    public double MostWaterPercentByVolume => Compositions.Max(made => made.WaterPercentByVolume());

    /// <summary>Methanol poisons and blinds: nothing that may hold it is proposed to somebody who did not name it.</summary>
    public override bool IsNamedOnly => Compositions.Any(composition => composition.PercentOf("methanol") > 0);

    /// <summary>Density at a temperature.</summary>
    public Density DensityAt(Temperature temperature) => Composition.DensityAt(temperature);
}
