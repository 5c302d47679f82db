using System.Text;
using JarLabel.Render.Svg;

namespace JarLabel.Render;

/// <summary>Writes a page as an SVG picture in millimetres. Letters are outlines, so it looks the same on a machine without the font;
/// the words stand beside them for screen readers. The same page gives the same text.</summary>
public static class SvgRenderer
{
    /// <summary>Writes UTF-8 without a byte order mark.</summary>
    /// <param name="target">Where the text goes; left open.</param>
    /// <param name="page">The page.</param>
    public static void Write(Stream target, Page page)
    {
        using var text = new StreamWriter(target, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\n" };
        new SvgPage(text).Write(page);
    }
}
