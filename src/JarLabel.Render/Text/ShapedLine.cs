namespace JarLabel.Render.Text;

/// <summary>One line of text as glyphs, in font units (<see cref="Typesetter.Em"/> to the type size).</summary>
/// <param name="Glyphs">The glyphs in drawing order.</param>
/// <param name="Width">Advance width of the whole line.</param>
/// <param name="Legible">True when a reader of the PDF finds the text again from the glyphs alone.</param>
/// <param name="Complete">False when some character has no glyph.</param>
internal sealed record ShapedLine(IReadOnlyList<ShapedGlyph> Glyphs, int Width, bool Legible, bool Complete);
