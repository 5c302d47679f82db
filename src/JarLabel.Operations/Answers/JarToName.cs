namespace JarLabel.Operations.Answers;

/// <summary>The jars that examples name: always some that stand on a shelf, so that an example can be done as it is said.</summary>
internal static class JarToName
{
    /// <summary>How a first jar is mixed.</summary>
    internal static Remedy Mix { get; } = Screen.Step("mix", ("grade", "garnet"), ("cut", "1.5"), ("pour", "350 mL"), ("solvent", "ethanol-95"), ("container", "500 mL"));

    /// <summary>The label of a jar; where there is no jar, how one is mixed.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="more">What else to fill in for the label.</param>
    internal static Remedy Label(Workbench bench, params IReadOnlyList<(string Name, string? Value)> more) =>
        OnShelf(bench, 1) is [var jar] ? Screen.Step("label", [("jar", $"{jar.Value}"), .. more]) : Mix;

    /// <summary>So many jars that stand on shelves, those first whose use-by is soonest; fewer where there are no more, or where the ledger cannot be read.</summary>
    internal static IReadOnlyList<JarNumber> OnShelf(Workbench bench, int most) =>
        LedgerAccess.Read(bench, view => Result<IReadOnlyList<JarEntry>>.Of(view.Shelf(new ShelfQuery(Take: most)))).TryGet(out var jars, out _) ? [.. jars.Select(jar => JarNumber.From(jar.Number))] : [];
}
