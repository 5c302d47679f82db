using JarLabel.Core.Catalog;
using JarLabel.Core.Jars;

namespace JarLabel.Core.Labels;

/// <summary>The grades and solvents in a jar, as printed.</summary>
internal static class GradeWords
{
    /// <summary><c>Garnet, dewaxed</c>; a blend names its parts, the largest first.</summary>
    internal static string Of(Contents contents, ShopCatalog catalog) =>
        Capital.Of(Names(contents, catalog));

    /// <summary>The same within a sentence.</summary>
    internal static string Names(Contents contents, ShopCatalog catalog) => string.Join(" + ", contents.Grades.Select(grade => catalog.GradeOf(grade).Name));

    /// <summary><c>ethanol 95 %</c>.</summary>
    internal static string Solvents(Contents contents, ShopCatalog catalog) =>
        string.Join(" + ", contents.Solvents.Select(s => catalog.SolventOf(s.Solvent).ShortName));

    /// <summary>The darkest grade's tone; waxy when any is.</summary>
    internal static Tone Tone(Contents contents, ShopCatalog catalog)
    {
        var grades = contents.Resins.Select(r => catalog.GradeOf(r.Grade)).ToArray();
        return new Tone(grades.Max(g => g.Tone.Filled), grades.Any(g => g.Waxy));
    }
}
