using JarLabel.Layout.Marks;

namespace JarLabel.Layout.Fitting;

/// <summary>A filled ground. One in a colour that prints white in one-bit gets a black edge, so that it never gets lost.</summary>
internal static class Panel
{
    private const double Edge = 0.5;

    internal static void Draw(string box, Area area, Ink fill, List<Mark> marks)
    {
        if (OneBit.Of(fill) == Ink.White && fill != Ink.White)
        {
            marks.Add(new BarMark(box, area.X, area.Y, area.Width, area.Height, Ink.Black));
            area = area.Shrunk(Edge);
        }

        marks.Add(new BarMark(box, area.X, area.Y, area.Width, area.Height, fill));
    }
}
