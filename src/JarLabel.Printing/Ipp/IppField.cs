namespace JarLabel.Printing.Ipp;

/// <summary>A named attribute with one value or several.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Values">Its values, at least one.</param>
public sealed record IppField(string Name, IReadOnlyList<IppValue> Values);
