using System.Collections;

namespace JarLabel.Core;

/// <summary>The problems of a result, which any other result takes over: <c>if (!read.TryGet(out var value, out var faults)) return faults;</c></summary>
/// <param name="problems">The problems; none where there is a value.</param>
public readonly struct Faults(IReadOnlyList<Problem> problems) : IReadOnlyList<Problem>
{
    /// <inheritdoc/>
    public int Count => problems?.Count ?? 0;

    /// <inheritdoc/>
    public Problem this[int index] => problems[index];

    /// <inheritdoc/>
    public IEnumerator<Problem> GetEnumerator() => (problems ?? []).GetEnumerator();

    /// <inheritdoc/>
    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
