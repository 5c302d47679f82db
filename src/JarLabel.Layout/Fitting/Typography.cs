namespace JarLabel.Layout.Fitting;

/// <summary>How lines of one voice stand: from the top of the capitals to the foot of the last line.</summary>
/// <param name="ruler">Measures the faces.</param>
/// <param name="ladder">The voice's size.</param>
/// <param name="face">The weight.</param>
internal readonly struct Typography(ITextRuler ruler, Ladder ladder, Face face)
{
    /// <summary>Line distance over type size: the least that Regulation (EU) 2024/2865 asks of hazard labels.</summary>
    private const double Leading = 1.2;

    internal Ladder Ladder => ladder;

    internal double Points => ladder.Size;

    internal Face Face => face;

    internal double LineDistance => Leading * Size;

    /// <summary>From the top of the box to the first baseline.</summary>
    internal double CapHeight => ruler.Measures(face).CapHeight * Size;

    private double Size => ladder.Size * TypePoint.Millimetres;

    private double Descent => ruler.Measures(face).Descent * Size;

    internal double HeightOf(int lines, bool trim = false) =>
        CapHeight + ((lines - 1) * LineDistance) + (trim ? 0 : Descent);

    /// <summary>Puts lines at the top of an area.</summary>
    internal void Set(string box, IReadOnlyList<string> lines, Area area, Align across, Ink ink, List<Mark> marks)
    {
        var baseline = area.Y + CapHeight;
        foreach (var line in lines)
        {
            var spare = across == Align.Start ? 0 : area.Width - ruler.Width(line, face, Points);
            marks.Add(new TextMark(box, area.X + (across == Align.Middle ? spare / 2 : spare), baseline, line, face, Points, ink));
            baseline += LineDistance;
        }
    }
}
