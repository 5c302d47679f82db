namespace JarLabel.Store.Index;

/// <summary>Which jars to list, soonest use-by first.</summary>
/// <param name="Shelf">Only this shelf; null for all.</param>
/// <param name="Due">Only jars that on this day are at or past their use-by, failed their test, or are to be tested; null for all.</param>
/// <param name="After">Go on after this jar of the page before; null for the first page.</param>
/// <param name="Take">How many at most.</param>
public sealed record ShelfQuery(string? Shelf = null, DateOnly? Due = null, ShelfMark? After = null, int Take = 50)
{
    /// <summary>True for a jar on the shelf that is asked for, behind the page before, whenever it is due.</summary>
    public bool Includes(JarEntry jar) =>
        jar.OnShelf && (Shelf is null || jar.Shelf == Shelf) && (After is not { } mark || (jar.UseBy, jar.Number).CompareTo((mark.UseBy, mark.Number)) > 0);
}

/// <summary>Where a page of the shelf list ended.</summary>
public readonly record struct ShelfMark(DateOnly UseBy, int Number);
