using JarLabel.Core;
using JarLabel.Store.Sheets;

namespace JarLabel.Bench.Labels.Many;

/// <summary>Many labels as written into one file.</summary>
/// <param name="File">The file's full path.</param>
/// <param name="Design">The design's id.</param>
/// <param name="Sheet">The stock's id.</param>
/// <param name="Jars">How many jars they are for.</param>
/// <param name="Labels">How many labels.</param>
/// <param name="Pages">On how many pages.</param>
/// <param name="First">Where the first one stands.</param>
/// <param name="Last">Where the last one stands.</param>
/// <param name="LeftOut">Jars of a run that are no longer on a shelf.</param>
/// <param name="WithMoved">Labels that had no room for everything; the rest stands on the jar card.</param>
public sealed record WrittenLabels(
    string File, string Design, string Sheet, int Jars, int Labels, int Pages, SheetPlace First, SheetPlace Last, IReadOnlyList<int> LeftOut, int WithMoved)
{
    /// <summary>Jars that got other dates by the shop's drying tests.</summary>
    public IReadOnlyList<int> Redated { get; init; } = [];

    /// <summary>What should be known of them as they are printed.</summary>
    public IReadOnlyList<Problem> Cautions { get; init; } = [];
}
