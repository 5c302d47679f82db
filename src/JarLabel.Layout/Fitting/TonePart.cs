namespace JarLabel.Layout.Fitting;

/// <summary>Five small squares that tell jars apart without reading.</summary>
internal sealed class TonePart(Fit fit, ToneBox box) : WordlessPart(fit, box.Frame)
{
    private const int Squares = 5;

    internal override int Count => Fit.Text.Tone is null ? 0 : 1;

    // The line of an empty square and of the ring, and the white between ring and square.
    private double Line => Fit.Sure(Math.Max(0.25, box.Side * 0.12));

    private double Pitch => box.Side + (2 * Line);

    // The ring stands around the last square, as far from its neighbour as squares are from each other; its room is kept for every grade, so
    // that the bars of two jars line up.
    private double Length => (Squares * Pitch) + (2 * Line);

    private double Thickness => box.Side + (4 * Line);

    internal override void Draw(Area area, Ink ink, List<Mark> marks)
    {
        var tone = Fit.Text.Tone!.Value;
        var bar = area.Piece(NaturalWidth(), box.Downwards ? Length : Thickness, Frame.Across, Frame.Down);
        for (var index = 0; index < Squares; index++)
        {
            var ringed = tone.Waxy && index == Squares - 1;
            var along = (index * Pitch) + (ringed ? 2 * Line : 0);
            var square = box.Downwards
                ? new Area(bar.X + (2 * Line), bar.Bottom - along - box.Side, box.Side, box.Side)
                : new Area(bar.X + along, bar.Y + (2 * Line), box.Side, box.Side);
            if (ringed)
                DrawRing(square, ink, marks);
            DrawSquare(square, index < tone.Filled, ink, marks);
        }
    }

    protected override double NaturalWidth() => box.Downwards ? Thickness : Length;

    protected override double NaturalHeight(double width)
    {
        Fit.NeedWidth(this, "tone", NaturalWidth(), width);
        return box.Downwards ? Length : Thickness;
    }

    private void DrawRing(Area square, Ink ink, List<Mark> marks)
    {
        DrawSquare(square.Shrunk(-2 * Line), false, ink, marks);
    }

    private void DrawSquare(Area square, bool filled, Ink ink, List<Mark> marks)
    {
        Fill(square, ink, marks);
        if (!filled)
            Fill(square.Shrunk(Line), Ink.White, marks);
    }

    private void Fill(Area area, Ink ink, List<Mark> marks) => marks.Add(new BarMark(Frame.Name, area.X, area.Y, area.Width, area.Height, ink));
}
