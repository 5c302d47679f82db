namespace JarLabel.Render.Text;

/// <summary>One glyph of a shaped line, placed from the line's left end in font units.</summary>
/// <param name="Number">The glyph's number in its font.</param>
/// <param name="X">Rightwards.</param>
/// <param name="Y">Downwards from the baseline.</param>
/// <param name="Cluster">Index of the first UTF-16 unit it stands for.</param>
internal readonly record struct ShapedGlyph(ushort Number, int X, int Y, int Cluster);
