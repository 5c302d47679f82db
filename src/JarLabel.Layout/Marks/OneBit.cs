namespace JarLabel.Layout.Marks;

/// <summary>How everything reads in pure black and white: a colour that carries white drawing becomes black, one that carries black
/// drawing becomes white. Never a grey, and no bar whose edge a printer would have to round.</summary>
public static class OneBit
{
    /// <summary>Fewest dots of a line: a single one may be lost where the head or the paper is not quite clean.</summary>
    public const int LeastDots = 2;

    /// <summary>Fewer dots than this are a line.</summary>
    private const double Line = 3.5;

    // A quarter millimetre is 1.998 dots of 203 to the inch.
    private const double Rounding = 0.05;

    // What lies half-way between two dots goes the same way whatever the last digit of its sum.
    private const double Even = 1e-6;

    /// <summary>Black or white.</summary>
    public static Ink Of(Ink ink) => ink is Ink.White or Ink.Yellow or Ink.Orange or Ink.Pale ? Ink.White : Ink.Black;

    /// <summary>The same mark in black or white, bars on whole dots and at least two wide.</summary>
    /// <param name="mark">The mark.</param>
    /// <param name="dpi">Dots per inch of the printer.</param>
    internal static Mark Of(Mark mark, int dpi) => mark switch
    {
        TextMark text => text with { Ink = Of(text.Ink) },
        BarMark bar => OnDots(bar, 25.4 / dpi),
        PathMark path => path with { Ink = Of(path.Ink) },
        _ => mark,
    };

    /// <summary>A line's thickness in whole dots, at least two.</summary>
    internal static double Thickness(double wanted, int dpi) => Thickness(wanted, 25.4 / dpi);

    private static double Thickness(double wanted, double dot) => Math.Max(LeastDots, Math.Ceiling((wanted / dot) - Rounding)) * dot;

    private static BarMark OnDots(BarMark bar, double dot)
    {
        var (x, width) = OnDots(bar.X, bar.Width, dot);
        var (y, height) = OnDots(bar.Y, bar.Height, dot);
        return bar with { X = x, Y = y, Width = width, Height = height, Ink = Of(bar.Ink) };
    }

    // Edges of panels and squares stay where their neighbours expect them; a line keeps its thickness wherever it begins.
    private static (double From, double Length) OnDots(double from, double length, double dot)
    {
        var first = Dot(from / dot);
        return (first * dot, length < Line * dot ? Thickness(length, dot) : (Dot((from + length) / dot) - first) * dot);
    }

    private static double Dot(double dots) => Math.Floor(dots + 0.5 + Even);
}
