namespace JarLabel.Core.Catalog;

/// <summary>Whether the rows of a catalog fit together: every id that a row names must be some row's.</summary>
internal static class CatalogCheck
{
    internal static IEnumerable<Problem> OfSubstances(CatalogTable<Substance> substances, CatalogTable<HazardClass> classes) =>
    [
        .. substances.Rows.SelectMany(s => Missing("substances.json", s.Id, "the hazard class", s.Hazards.Select(h => h.Class), classes)),
        .. substances.Rows.SelectMany(s => SubstanceFaults(s, classes)),
    ];

    internal static IEnumerable<Problem> OfKeeping(CatalogTable<Grade> grades, CatalogTable<KeepingClass> keeping) =>
        grades.Rows.SelectMany(g => Missing("grades.json", g.Id, "the keeping class", [g.Keeping], keeping));

    internal static IEnumerable<Problem> OfForms(CatalogTable<Grade> grades, CatalogTable<LacForm> forms) =>
        grades.Rows.SelectMany(g => Missing("grades.json", g.Id, "the form", [g.Form], forms));

    internal static IEnumerable<Problem> OfStatements(CatalogTable<HazardClass> classes, CatalogTable<Phrase> phrases) =>
        classes.Rows.SelectMany(c => Missing("classes.json", c.Id, "the statement", [c.Statement, .. c.Precautions], phrases));

    internal static IEnumerable<Problem> OfIngredients(CatalogTable<HazardClass> classes) =>
        classes.Rows.SelectMany(c => Missing("classes.json", c.Id, "the ingredient's class", (c.Limits?.Of ?? []).Select(l => l.Class), classes));

    internal static IEnumerable<Problem> OfSolvents(CatalogTable<SolventRow> solvents, CatalogTable<Substance> substances) =>
        solvents.Rows.SelectMany(s => SolventFaults(s, substances, solvents));

    private static IEnumerable<Problem> Missing<T>(
        string file, string id, string member, IEnumerable<string> named, CatalogTable<T> known)
        where T : CatalogRow =>
        named.Where(n => known.Find(n) is null).Select(n => CatalogProblems.UnknownReference(file, id, member, n, known.Ids));

    /// <summary>What would let a hazard slip off a label unseen.</summary>
    private static IEnumerable<Problem> SubstanceFaults(Substance substance, CatalogTable<HazardClass> classes) =>
    [
        .. substance.Hazards.Where(h => classes.Find(h.Class) is { Computed: true })
            .Select(h => CatalogProblems.ComputedClass("substances.json", substance.Id, h.Class)),
        .. substance.Hazards.Where(h => h.AtLeast is null && classes.Find(h.Class) is { Computed: false } && !HasGeneralLimit(h, classes))
            .Select(h => CatalogProblems.NoLimit("substances.json", substance.Id, h.Class)),
        .. substance is { Lel: not null, Flash: null } ? [CatalogProblems.BurnsWithoutFlashPoint("substances.json", substance.Id)] : Array.Empty<Problem>(),
    ];

    /// <summary>True when some class says from what share of such an ingredient a mixture is in it, under each rule set that the row holds under.</summary>
    private static bool HasGeneralLimit(SubstanceHazard hazard, CatalogTable<HazardClass> classes) =>
        (hazard.OnlyUnder is { } one ? [one] : Enum.GetValues<RuleSet>())
        .All(rules => classes.Rows.Any(c => c.HoldsUnder(rules) && c.Limits?.For(hazard.Class, rules) is not null));

    private static IEnumerable<Problem> SolventFaults(
        SolventRow row, CatalogTable<Substance> substances, CatalogTable<SolventRow> solvents)
    {
        string[] known = [.. substances.Ids, .. solvents.Ids];
        var strangers = PartsOf(row)
            .Where(part => substances.Find(part) is null && solvents.Find(part) is null)
            .Select(part => CatalogProblems.UnknownReference("solvents.json", row.Id, "the part", part, known));
        var weightless = row.Contains
            .Select(c => (c.Measure, Of: c.Parts.Select(p => p.Of).Where(part => substances.Find(part) is { Density: null }).ToArray(), c.Parts.Count))
            .Where(c => c.Measure == Measure.Volume || c.Of.Length == c.Count)
            .SelectMany(c => c.Of)
            .Distinct()
            .Select(part => CatalogProblems.NoDensity("solvents.json", row.Id, part));
        return IsMadeOf(row, row.Id, substances, solvents, [])
            ? [.. strangers, .. weightless, CatalogProblems.MadeOfItself("solvents.json", row.Id)]
            : [.. strangers, .. weightless];
    }

    private static IEnumerable<string> PartsOf(SolventRow row) => row.Contains.SelectMany(c => c.Parts).Select(p => p.Of).Distinct();

    /// <summary>A substance of the same name outranks a solvent: pure methanol is made of methanol.</summary>
    private static bool IsMadeOf(
        SolventRow row, string id, CatalogTable<Substance> substances, CatalogTable<SolventRow> solvents, HashSet<string> seen) =>
        PartsOf(row).Where(part => substances.Find(part) is null).Select(solvents.Find).OfType<SolventRow>()
            .Any(part => part.Id == id || (seen.Add(part.Id) && IsMadeOf(part, id, substances, solvents, seen)));
}
