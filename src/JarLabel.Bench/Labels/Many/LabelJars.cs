using JarLabel.Bench.Recording;
using JarLabel.Core;

namespace JarLabel.Bench.Labels.Many;

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
        ArgumentNullException.ThrowIfNull(bench);
        ArgumentNullException.ThrowIfNull(wanted);
        ArgumentNullException.ThrowIfNull(choice);
        return LabelPress.Open(bench).Then(press => press.Choose(choice).Then(stock => LedgerDesk.Record(bench, step =>
            JarPick.Of(bench, step, wanted, choice.Copies).Then(Affordable).Then(pick =>
                new LabelRun(bench, step, press, stock, choice.Start, progress).Write(pick, file)))));
    }

    /// <summary>The same jars, unless they would be too many labels.</summary>
    internal static Result<JarPick> Affordable(JarPick pick) => pick.Labels <= MostLabels ? pick : BenchProblems.TooManyLabels(pick.Labels);
}
