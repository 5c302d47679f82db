using JarLabel.Core.Labels;

namespace JarLabel.Layout;

/// <summary>One label on its way to its place.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Page">The page; labels of one page follow each other.</param>
/// <param name="Place">The place on it, from 1.</param>
/// <param name="Name">Whose label it is, for messages; null says only which box.</param>
public readonly record struct Placement(LabelText Text, int Page, int Place, string? Name = null);
