using System.Globalization;
using JarLabel.Core.Catalog;
using JarLabel.Core.Hazards;
using JarLabel.Core.Jars;

namespace JarLabel.Core.Labels;

/// <summary>What is in a jar, in words and percent by weight.</summary>
internal static class ContentsWords
{
    /// <summary><c>Shellac 18 %, ethanol 75 %, water 7 % by weight</c>; where the solvent is unknown, so it says.</summary>
    internal static string Of(Contents contents, ShopCatalog catalog)
    {
        var poured = contents.Solvents.Select(s => (Solvent: catalog.SolventOf(s.Solvent), s.Weight)).ToArray();
        var shellac = $"Shellac {Percent((decimal)(contents.Flakes / (contents.Flakes + contents.PouredWeight) * 100))}";
        if (poured.Any(s => !s.Solvent.CompositionKnown))
        {
            return $"{shellac}; {string.Join(" and ", poured.Select(s => s.Solvent.Name))}";
        }

        return $"{shellac}, {Ingredients(JarComposition.Possible(poured, contents.Flakes, catalog).Single())} by weight";
    }

    /// <summary><c>Ethanol 92 %, water 8 % by weight</c>; where nobody knows, so it says, with the most methanol it may hold.</summary>
    internal static string Of(Solvent solvent, HazardAssessment hazards) => solvent.CompositionKnown
        ? Capital.Of($"{Ingredients(solvent.Composition)} by weight")
        : hazards.MethanolPercent > 0 ? $"Composition unknown; taken as {Percent(hazards.MethanolPercent)} methanol by weight" : "Composition unknown";

    private static string Ingredients(Composition composition) => string.Join(", ", composition.Ingredients
        .Where(i => i.Substance.Id != Substance.ResinId)
        .OrderByDescending(i => i.Percent)
        .Select(i => $"{i.Substance.Name} {Percent(i.Percent)}"));

    /// <summary>Whole percent; below 10 one decimal, so that 4.6 % of methanol does not read as 5 %.</summary>
    private static string Percent(decimal percent) =>
        percent.ToString(percent < 10 ? "0.#" : "0", CultureInfo.InvariantCulture) + " %";
}
