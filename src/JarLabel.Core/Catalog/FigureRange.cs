using JarLabel.Core.Reading;

namespace JarLabel.Core.Catalog;

/// <summary>A published range, both ends included.</summary>
/// <param name="Least">The lower end.</param>
/// <param name="Most">The upper end.</param>
/// <param name="Source">Where it was printed.</param>
public sealed record FigureRange(decimal Least, decimal Most, string Source)
{
    internal static FigureRange Read(FieldReader fields) =>
        new(fields.Exact("least", 0, 1000), fields.Exact("most", 0, 1000), fields.Text("source"));
}
