using System.Text.Json.Serialization;
using JarLabel.Core.Mixing;
using JarLabel.Core.Quantities;
using UnitsNet;

namespace JarLabel.Core.Jars;

/// <summary>What is in a jar: flakes by grade and solvents as poured. All else about the liquid follows from it.</summary>
/// <param name="Resins">Flakes, the largest part first.</param>
/// <param name="Solvents">Solvents, the largest part first.</param>
public sealed record Contents(IReadOnlyList<ResinPart> Resins, IReadOnlyList<SolventPart> Solvents)
{
    /// <summary>All flakes.</summary>
    [JsonIgnore]
    public Mass Flakes => Mass.FromGrams(Resins.Sum(r => r.Weight.Grams));

    /// <summary>All solvent, as poured.</summary>
    [JsonIgnore]
    public Volume Poured => Volume.FromMilliliters(Solvents.Sum(s => s.Poured.Milliliters));

    /// <summary>Weight of all solvent.</summary>
    [JsonIgnore]
    public Mass PouredWeight => Mass.FromGrams(Solvents.Sum(s => s.Weight.Grams));

    /// <summary>The cut; null when the jar is empty.</summary>
    [JsonIgnore]
    public PoundCut? Cut => Poured > Volume.Zero ? PoundCut.Of(Flakes, Poured) : null;

    /// <summary>Finished liquid.</summary>
    [JsonIgnore]
    public Volume Liquid => Poured + Shellac.VolumeOf(Flakes);

    /// <summary>The batch that would give these contents.</summary>
    [JsonIgnore]
    public Recipe? Recipe => Cut is { } cut ? new Recipe(cut, Flakes, Poured, PouredWeight / Poured) : null;

    /// <summary>A fresh batch of one grade in one solvent.</summary>
    public static Contents Of(Recipe recipe, string grade, string solvent, DateOnly? flakeDate)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        return new([new(grade, recipe.Flakes, flakeDate)], [new(solvent, recipe.Pour, recipe.PourWeight)]);
    }
}
