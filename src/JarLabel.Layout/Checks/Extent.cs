using System.Buffers;

namespace JarLabel.Layout.Checks;

/// <summary>The room a mark really takes, mm.</summary>
internal readonly record struct Extent(double Left, double Top, double Right, double Bottom)
{
    /// <summary>What goes below the baseline: letters with a tail, also under a mark, and those with a cedilla or an ogonek.</summary>
    private static readonly SearchValues<char> BelowBaseline = SearchValues.Create("gjpqyQJ,;()[]{}|/_@$µ§¶þŋƒȷ„‚¿¡βγζημξρςφχψруфцщдДЦЩýÿçÇąĄęĘģĢįĮķĶļĻņŅŗŖşŞţŢșȘțȚųŲŷĝğġĵĳŊØø\\¢¦¸");

    internal static Extent Of(Mark mark, ITextRuler ruler) => mark switch
    {
        TextMark text => OfText(text, ruler),
        BarMark bar => Sized(bar.X, bar.Y, bar.Width, bar.Height),
        PathMark path => Sized(path.X, path.Y, Symbol.Frame * path.Scale, Symbol.Frame * path.Scale),
        QrMark code => Sized(code.X, code.Y, code.Module * code.Modules.Size, code.Module * code.Modules.Size),
        _ => throw new NotSupportedException($"No extent for a {mark.GetType().Name}."),
    };

    internal static Extent OfQuietZone(QrMark code)
    {
        var quiet = QrEncoder.QuietZone * code.Module;
        var inner = Sized(code.X, code.Y, code.Module * code.Modules.Size, code.Module * code.Modules.Size);
        return new Extent(inner.Left - quiet, inner.Top - quiet, inner.Right + quiet, inner.Bottom + quiet);
    }

    /// <summary>By how much two extents lie over each other, in the direction where it is least; not positive when they do not.</summary>
    internal double Over(Extent other) =>
        Math.Min(Math.Min(Right, other.Right) - Math.Max(Left, other.Left), Math.Min(Bottom, other.Bottom) - Math.Max(Top, other.Top));

    private static Extent Sized(double x, double y, double width, double height) => new(x, y, x + width, y + height);

    private static Extent OfText(TextMark text, ITextRuler ruler)
    {
        var size = text.Points * TypePoint.Millimetres;
        var measures = ruler.Measures(text.Face);
        var width = ruler.Width(text.Text, text.Face, text.Points);
        return new Extent(text.X, text.Baseline - (measures.CapHeight * size), text.X + width, text.Baseline + (Foot(text.Text) ? measures.Descent * size : 0));
    }

    // Figures and most letters stand on the baseline; only these go below it, and what has a mark below.
    private static bool Foot(string text) => text.AsSpan().ContainsAny(BelowBaseline) || text.AsSpan().ContainsAnyInRange('\u0316', '\u0333');
}
