namespace JarLabel.Operations.Steps;

/// <summary>What can be chosen of what the shop has, each with its words, and read by its id.</summary>
internal static class Choose
{
    internal static Result<Grade> Grade(Workbench bench, string text, string where) => bench.Catalog.Grades.Named(text, where);

    internal static Result<Solvent> Solvent(Workbench bench, string text, string where) => bench.Catalog.Solvents.Named(text, where);

    /// <param name="none">What stands first for none of them; null where one of them does.</param>
    internal static Func<Workbench, IReadOnlyList<(string Value, string Words)>> Grades(string? none = null) =>
        bench => After(none, bench.Catalog.Grades.Rows.Select(grade => (grade.Id, grade.Name)));

    /// <inheritdoc cref="Grades"/>
    internal static Func<Workbench, IReadOnlyList<(string Value, string Words)>> Solvents(string? none = null) =>
        bench => After(none, bench.Catalog.Solvents.Rows.Select(solvent => (solvent.Id, solvent.Name)));

    /// <inheritdoc cref="Grades"/>
    internal static Func<Workbench, IReadOnlyList<(string Value, string Words)>> Shelves(string? none = null) =>
        bench => After(none, bench.Settings.Shelves.Select(shelf => (shelf.Name, shelf.Name)));

    /// <inheritdoc cref="Grades"/>
    internal static Func<Workbench, IReadOnlyList<(string Value, string Words)>> Materials(string? none = null) =>
        _ => After(none, ContainerMaterials.ByWord.Keys.Select(word => (word, word.Replace('-', ' '))));

    /// <summary>The label stock; nothing where it cannot be read, which is told by whoever prints.</summary>
    internal static Func<Workbench, IReadOnlyList<(string Value, string Words)>> Stock(string none) =>
        bench => LabelComposer.Open(bench).Then(composer => composer.Sheets()).TryGet(out var sheets, out _) ? After(none, sheets.Where(sheet => sheet.Design != WriteNotice.Design).Select(sheet => (sheet.Id, sheet.Title))) : [];

    private static IReadOnlyList<(string Value, string Words)> After(string? none, IEnumerable<(string, string)> rows) => none is null ? [.. rows] : [("", none), .. rows];
}
