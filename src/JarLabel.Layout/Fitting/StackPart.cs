namespace JarLabel.Layout.Fitting;

/// <summary>Parts one after the other; those without anything to say take no room and no gap.</summary>
internal abstract class StackPart : Part
{
    private readonly StackBox box;
    private readonly Part[] parts;

    protected StackPart(Fit fit, StackBox box, Part[] parts)
        : base(fit, box.Frame)
    {
        this.box = box;
        this.parts = parts;
        foreach (var part in parts)
            part.Parent = this;
    }

    internal bool Downwards => box.Downwards;

    internal override IReadOnlyList<Part> Parts => parts;

    internal override int Count => Array.Exists(parts, static part => part.Speaks && part.Shown) ? 1 : 0;

    internal override IEnumerable<string> Moved => LeftOut > 0 ? Texts : [];

    internal override IEnumerable<string> Texts => Parts.SelectMany(part => part.Texts);

    protected double Pad => box.Pad;

    protected double Gap => box.Gap;

    internal override void Draw(Area area, Ink ink, List<Mark> marks)
    {
        if (box.Fill is { } fill)
            Panel.Draw(Frame.Name, area, fill, marks);
        DrawInside(area.Shrunk(Pad), box.Ink ?? ink, marks);
    }

    protected abstract void DrawInside(Area area, Ink ink, List<Mark> marks);

    /// <summary>The parts that are there.</summary>
    protected List<Part> Present()
    {
        var present = new List<Part>(parts.Length);
        foreach (var part in parts)
        {
            if (part.Shown)
                present.Add(part);
        }

        return present;
    }

    /// <summary>Shares spare room out by the parts' <see cref="BoxFrame.Grow"/>; returns what nobody took.</summary>
    protected static double Share(double spare, List<Part> parts, double[] lengths)
    {
        var shares = 0.0;
        foreach (var part in parts)
            shares += part.Frame.Grow;
        if (shares == 0 || spare <= 0)
            return Math.Max(0, spare);
        for (var index = 0; index < lengths.Length; index++)
            lengths[index] += spare * parts[index].Frame.Grow / shares;
        return 0;
    }
}

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
