namespace JarLabel.Layout;

/// <summary>One label, every mark in its place on the page.</summary>
/// <param name="Design">How it looks.</param>
/// <param name="Area">Where it lies.</param>
/// <param name="Marks">What is drawn.</param>
/// <param name="Moved">What moves to the jar card.</param>
public sealed record PlacedLabel(Design Design, LabelArea Area, IReadOnlyList<Mark> Marks, IReadOnlyList<MovedTexts> Moved);
