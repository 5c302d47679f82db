using System.Diagnostics.CodeAnalysis;
using HarfBuzzSharp;
using JarLabel.Layout;
using Buffer = HarfBuzzSharp.Buffer;
using Face = JarLabel.Layout.Marks.Face;

namespace JarLabel.Render.Text;

/// <summary>Shapes text in one face: ruler and renderers all take their glyphs from here, so that what was measured is what is drawn.
/// One per face for the life of the process; safe to use from several threads. Skia is not needed, and not loaded.</summary>
[SuppressMessage("Design", "CA1001:Types that own disposable fields should be disposable", Justification = "Lives as long as the process.")]
internal sealed class Typesetter
{
    /// <summary>Font units to the type size, in all our files.</summary>
    internal const int Em = 1000;

    // Ligatures would make one glyph of "fi" and break words read back from a PDF. Kerning stays on: it is HarfBuzz's default.
    // The family's figures are tabular as they stand, so no feature asks for them.
    private static readonly Feature[] Features = [Off('l', 'i', 'g', 'a'), Off('c', 'l', 'i', 'g')];

    private static readonly Lazy<Typesetter>[] Faces =
        Array.ConvertAll(Enum.GetValues<Face>(), face => new Lazy<Typesetter>(() => new Typesetter(face)));

    private readonly Font font;
    private readonly ThreadLocal<Buffer> buffers = new(() => new Buffer());
    private readonly RecentLines recent = new();
    private readonly Dictionary<uint, bool> firstOfItsGlyph = [];

    private Typesetter(Face face)
    {
        var file = FontFile.Of(face);
        using var blob = new Blob(file.Address, file.Length, MemoryMode.ReadOnly);
        using var hbFace = new HarfBuzzSharp.Face(blob, 0);
        hbFace.MakeImmutable();
        if (hbFace.UnitsPerEm != Em)
            throw new InvalidOperationException($"The font of {face} has {hbFace.UnitsPerEm} units to the em.");
        font = new Font(hbFace);
        font.SetFunctionsOpenType();
        Measures = ReadMeasures();
    }

    internal FaceMeasures Measures { get; }

    internal static Typesetter For(Face face) => Faces[(int)face].Value;

    internal ShapedLine Set(string text) => recent.Find(text) ?? recent.Keep(text, Shape(text));

    internal bool HasGlyph(uint code) => font.TryGetNominalGlyph(code, out _);

    private static Feature Off(char a, char b, char c, char d) => new(new Tag(a, b, c, d), 0);

    private FaceMeasures ReadMeasures()
    {
        font.TryGetHorizontalFontExtents(out var extents);
        return new FaceMeasures(
            (double)extents.Ascender / Em,
            (double)-extents.Descender / Em,
            HeightOf('H') / Em,
            HeightOf('x') / Em);
    }

    private double HeightOf(char letter) =>
        font.TryGetGlyph(letter, out var glyph) && font.TryGetGlyphExtents(glyph, out var extents)
            ? extents.YBearing
            : throw new InvalidOperationException($"The font has no {letter}.");

    private ShapedLine Shape(string text)
    {
        var buffer = buffers.Value!;
        buffer.ClearContents();
        buffer.AddUtf16(text);
        buffer.GuessSegmentProperties();
        font.Shape(buffer, Features);
        return Collect(text, buffer.GetGlyphInfoSpan(), buffer.GetGlyphPositionSpan());
    }

    private ShapedLine Collect(string text, ReadOnlySpan<GlyphInfo> infos, ReadOnlySpan<GlyphPosition> positions)
    {
        var glyphs = new ShapedGlyph[infos.Length];
        var pen = 0;
        var legible = true;
        var complete = true;
        for (var i = 0; i < infos.Length; i++)
        {
            var (glyph, at) = (infos[i], positions[i]);
            glyphs[i] = new ShapedGlyph((ushort)glyph.Codepoint, pen + at.XOffset, -at.YOffset, (int)glyph.Cluster);
            pen += at.XAdvance;
            complete &= glyph.Codepoint != 0;
            legible &= StandsForItself(text, (int)glyph.Cluster, glyph.Codepoint);
        }

        return new ShapedLine(glyphs, pen, legible && glyphs.Length == text.Length, complete);
    }

    // A PDF reader finds the lowest character that has this glyph: a no-break space comes back as a space, a Greek mu as a micro sign.
    private bool StandsForItself(string text, int index, uint glyph) =>
        font.TryGetNominalGlyph(text[index], out var nominal) && nominal == glyph && IsFirstOf(text[index], glyph);

    private bool IsFirstOf(uint code, uint glyph)
    {
        lock (firstOfItsGlyph)
        {
            if (!firstOfItsGlyph.TryGetValue(code, out var first))
                firstOfItsGlyph[code] = first = !AnyLower(code, glyph);
            return first;
        }
    }

    private bool AnyLower(uint code, uint glyph)
    {
        for (var lower = 32u; lower < code; lower++)
        {
            if (font.TryGetNominalGlyph(lower, out var same) && same == glyph)
                return true;
        }

        return false;
    }
}

/// <summary>One glyph of a shaped line, placed from the line's left end in font units.</summary>
/// <param name="Number">The glyph's number in its font.</param>
/// <param name="X">Rightwards.</param>
/// <param name="Y">Downwards from the baseline.</param>
/// <param name="Cluster">Index of the first UTF-16 unit it stands for.</param>
internal readonly record struct ShapedGlyph(ushort Number, int X, int Y, int Cluster);
