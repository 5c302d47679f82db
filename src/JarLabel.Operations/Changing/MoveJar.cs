namespace JarLabel.Operations.Changing;

/// <summary>Moves a jar to another shelf. On a warmer one its use-by comes sooner, and it gets a new label.</summary>
public static class MoveJar
{
    /// <summary>The jar on its new shelf, or why not.</summary>
    public static Result<JarOutcome> Do(Workbench bench, JarNumber number, string shelf, LabelChoice? label)
    {
        return bench.Settings.Shelf(shelf).Then(to =>
            JarChange.Do(bench, number, label, jar => new Moved(bench.Now, to.Name, ShelfMoves.Shortened(bench, jar, to))));
    }
}
