namespace JarLabel.Core.Labels;

/// <summary>What is in a jar, in words and percent by weight.</summary>
public static class ContentsWords
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

        var possible = JarComposition.Possible(poured, contents.Flakes, catalog);
        return possible is [var known] ? $"{Hundred(known)} by weight" : $"{shellac}, {Ingredients(possible)} by weight";
    }

    /// <summary><c>Ethanol 92 %, water 8 % by weight</c>; where nobody knows, so it says, with the most methanol it may hold.</summary>
    public static string Of(Solvent solvent, HazardAssessment hazards)
    {
        return solvent.CompositionKnown ? Capital.Of($"{(solvent.Compositions is [var known] ? Hundred(known) : Ingredients(solvent.Compositions))} by weight")
            : hazards.MethanolPercent > 0 ? $"Composition unknown; taken as {Percent(hazards.MethanolPercent)} methanol by weight"
            : "Composition unknown";
    }

    /// <summary>The shellac first, then the largest. They add up to 100 as they are printed: what the rounding leaves over goes to the largest, and a small share
    /// that needs a decimal gives all of them one.</summary>
    private static string Hundred(Composition known)
    {
        (string Name, decimal Percent)[] shares =
        [
            .. known.Ingredients
                .OrderBy(ingredient => ingredient.Substance.Id != Substance.ResinId).ThenByDescending(ingredient => ingredient.Percent)
                .Select(ingredient => (ingredient.Substance.Name, ingredient.Percent)),
        ];
        var decimals = shares.Any(share => share.Percent < 10 && decimal.Round(share.Percent, 1) % 1 != 0) ? 1 : 0;
        decimal[] rounded = [.. shares.Select(share => decimal.Round(share.Percent, decimals, MidpointRounding.AwayFromZero))];
        rounded[rounded.IndexOf(rounded.Max())] += 100 - rounded.Sum();
        return Capital.Of(string.Join(", ", shares.Zip(rounded, (share, percent) => string.Create(CultureInfo.InvariantCulture, $"{share.Name} {percent:0.#} %"))));
    }

    /// <summary>Each with its share; from the least to the most where a data sheet leaves it open.</summary>
    private static string Ingredients(IReadOnlyList<Composition> possible) => string.Join(", ", possible
        .SelectMany(composition => composition.Ingredients.Select(i => i.Substance))
        .Where(substance => substance.Id != Substance.ResinId)
        .DistinctBy(substance => substance.Id)
        .Select(substance => (substance.Name, Least: possible.Min(c => c.PercentOf(substance.Id)), Most: possible.Max(c => c.PercentOf(substance.Id))))
        .OrderByDescending(share => share.Most)
        .Select(share => $"{share.Name} {Span(share.Least, share.Most)}"));

    private static string Span(decimal least, decimal most) =>
        Percent(least) == Percent(most) ? Percent(most) : $"{Percent(least)[..^2]} to {Percent(most)}";

    /// <summary>Whole percent; below 10 one decimal, so that 4.6 % of methanol does not read as 5 %.</summary>
    private static string Percent(decimal percent) =>
        percent.ToString(percent < 10 ? "0.#" : "0", CultureInfo.InvariantCulture) + " %";
}
