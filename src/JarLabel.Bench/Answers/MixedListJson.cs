using JarLabel.Core;

namespace JarLabel.Bench.Answers;

/// <summary>What <c>mix --list</c> says: the new jars in the order of the rows, and their labels.</summary>
internal sealed record MixedListJson(IReadOnlyList<string> Jars, LabelsJson? Labels, IReadOnlyList<Problem> Warnings);
