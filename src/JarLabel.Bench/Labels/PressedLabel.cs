using JarLabel.Layout;
using JarLabel.Layout.Marks;

namespace JarLabel.Bench.Labels;

/// <summary>A page that passed the preflight.</summary>
/// <param name="Page">What is drawn.</param>
/// <param name="Label">The label on it, with what had no room and stands on the jar card instead.</param>
public sealed record PressedLabel(Page Page, PlacedLabel Label);
