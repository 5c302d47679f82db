using JarLabel.Layout.Marks;

namespace JarLabel.Layout.Checks;

/// <summary>A line of text and the room it takes.</summary>
internal readonly record struct SetText(TextMark Mark, Extent Extent);
