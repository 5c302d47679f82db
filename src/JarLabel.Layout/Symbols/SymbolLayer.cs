using JarLabel.Layout.Marks;

namespace JarLabel.Layout.Symbols;

/// <summary>One filled outline of a symbol; layers cover each other in order.</summary>
/// <param name="Ink">Its colour.</param>
/// <param name="Data">SVG path data in a frame of 100 by 100, even-odd.</param>
public readonly record struct SymbolLayer(Ink Ink, string Data);
