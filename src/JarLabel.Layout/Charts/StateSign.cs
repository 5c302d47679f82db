using JarLabel.Core.Jars;
using JarLabel.Layout.Marks;

namespace JarLabel.Layout.Charts;

/// <summary>How a jar stands, as a shape: filled is good, half is to be tested, hollow is past, dotted is not yet dissolved. Colour comes
/// third, after shape and word.</summary>
internal static class StateSign
{
    private const double Line = 0.4;
    private const int Dots = 8;

    internal static IEnumerable<Mark> Of(JarState state, double x, double y, double radius, string box)
    {
        var draw = new Strokes(box);
        return state switch
        {
            JarState.Good => [draw.Disc(x, y, radius, Ink.Green)],
            JarState.Test => [draw.Disc(x, y, radius, Ink.Orange), draw.HalfDisc(x, y, radius), draw.Ring(x, y, radius, Line)],
            JarState.Dissolving => Enumerable.Range(0, Dots).Select(i => draw.Disc(
                x + ((radius - Line) * Math.Cos(2 * Math.PI * i / Dots)), y + ((radius - Line) * Math.Sin(2 * Math.PI * i / Dots)), 1.1 * Line)),
            _ => [draw.Ring(x, y, radius, Line)],
        };
    }
}
