namespace JarLabel.Operations.Scanning;

/// <summary>Finds jars on the shelves by words: flakes, alcohol, shelf, job, who mixed it, what was noted.</summary>
internal static class JarSearch
{
    /// <summary>So many jars are looked through.</summary>
    private const int MostJars = 1000;

    /// <summary>The jars that hold every one of the words somewhere, soonest use-by first.</summary>
    internal static Result<ShelfList> Of(Workbench bench, LedgerView view, string typed)
    {
        var words = typed.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        return ShelfList.Of(bench, view, new ShelfQuery(Take: MostJars), null).Then<ShelfList>(list => list with { Jars = [.. list.Jars.Where(jar => words.All(word => Says(bench, jar, word) || Tells(view, jar, word)))] });
    }

    private static bool Says(Workbench bench, JarEntry jar, string word) =>
        jar.Grades.Select(grade => bench.Catalog.GradeOf(grade).Name).Concat(jar.Grades).Concat(jar.Solvents.Select(solvent => bench.Catalog.SolventOf(solvent).Name)).Concat(jar.Solvents).Append(jar.Shelf)
            .Any(text => Has(text, word));

    private static bool Tells(LedgerView view, JarEntry jar, string word) =>
        JarHistory.Of(JarNumber.From(jar.Number), view.EventsOf(Subject.Jar(jar.Number))).TryGet(out var history, out _)
        && ((string?[])[history.Jar.Job, history.Jar.By, history.Jar.Note, .. history.Life.Standing.Select(happened => happened is Used used ? used.Job : happened is Noted noted ? noted.Text : null)])
            .Any(text => text is not null && Has(text, word));

    private static bool Has(string text, string word) => text.Contains(word, StringComparison.OrdinalIgnoreCase);
}
