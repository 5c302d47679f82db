using JarLabel.Core.Jars;
using Moved = JarLabel.Layout.Moved;

namespace JarLabel.Bench.Labels;

/// <summary>A label as written.</summary>
/// <param name="File">The file's full path.</param>
/// <param name="Event">The fact that the ledger keeps.</param>
/// <param name="Moved">What had no room and stands on the jar card instead.</param>
public sealed record WrittenLabel(string File, Labelled Event, IReadOnlyList<Moved> Moved);
