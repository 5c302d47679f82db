namespace JarLabel.Operations.Labels.Many;

/// <summary>Prints the labels of many jars into one file, each as the jar is now, at the free places of the sheets in use.</summary>
public static class LabelJars
{
    /// <summary>Most labels at once: some 300 sheets of the smallest.</summary>
    public const int MostLabels = 20_000;

    /// <summary>What was written, or every reason why nothing was; then nothing was recorded either.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="wanted">Whose labels.</param>
    /// <param name="choice">Which label, and how many of each.</param>
    /// <param name="file">The file to write; null for the usual place.</param>
    /// <param name="progress">Told how many labels of how many are placed; may be called on another thread.</param>
    public static Result<WrittenLabels> Do(Workbench bench, JarsWanted wanted, LabelChoice choice, string? file, Action<int, int>? progress = null)
    {
        return JarDesigns.Demand(bench, choice).Then(_ => LabelComposer.Open(bench)).Then(composer => composer.Choose(choice).Then(stock => LedgerAccess.Record(bench, step =>
            JarPick.Of(bench, step, wanted, choice.Copies).Then(Affordable).Then(pick =>
                new LabelRun(bench, step, composer, stock, choice.Start, progress).Write(pick, file)))));
    }

    /// <summary>The same jars, unless they would be too many labels.</summary>
    internal static Result<JarPick> Affordable(JarPick pick) => pick.Labels <= MostLabels ? pick : OperationProblems.TooManyLabels(pick.Labels);
}

/// <summary>One jar or a run of jars whose labels are wanted.</summary>
/// <param name="Jars">Which.</param>
/// <param name="Copies">How many of each; null for as many as of all others.</param>
/// <param name="Where">Where it was read, for messages.</param>
public readonly record struct JarWish(JarSpan Jars, int? Copies = null, string Where = "jar")
{
    /// <summary>True for a row of a list, whose copies are added to those of other rows; otherwise a jar that is named again is the same jar.</summary>
    public bool AddsUp { get; init; }
}

/// <summary>Whose labels are wanted.</summary>
/// <param name="Named">Jars and runs of jars, in the order they were named.</param>
/// <param name="Shelf">All jars of this shelf too; null for none.</param>
/// <param name="All">All jars on all shelves.</param>
public sealed record JarsWanted(IReadOnlyList<JarWish> Named, string? Shelf = null, bool All = false)
{
    /// <summary>The one jar when it is no more than that.</summary>
    public JarNumber? One => !All && Shelf is null && Named is [{ Jars: { IsOne: true } only, Copies: null }] ? only.First : null;
}
