using JarLabel.Core.Reading;

namespace JarLabel.Core.Catalog;

/// <summary>One part of a stated composition.</summary>
/// <param name="Of">Id of a substance or of another solvent.</param>
/// <param name="Parts">How many parts.</param>
public sealed record Part(string Of, decimal Parts)
{
    internal static Part Read(FieldReader fields) => new(fields.Text("of"), fields.Exact("parts", 0.000001m, 1_000_000));
}
