using JarLabel.Core;
using JarLabel.Core.Air;
using JarLabel.Core.Hazards;

namespace JarLabel.Bench.Notices;

/// <summary>A notice as written.</summary>
/// <param name="File">The file's full path.</param>
/// <param name="Sheet">The stock's id.</param>
/// <param name="Shelf">The shelf's name.</param>
/// <param name="Request">What was asked.</param>
/// <param name="Stock">What stands on the shelf.</param>
/// <param name="Air">What the worst of it does to the room's air; null when nothing is known of its vapour.</param>
/// <param name="Cautions">Storage limits that the shelf passes.</param>
public sealed record WrittenNotice(
    string File, string Sheet, string Shelf, NoticeRequest Request, ShelfStock Stock, AirAssessment? Air, IReadOnlyList<Problem> Cautions);
