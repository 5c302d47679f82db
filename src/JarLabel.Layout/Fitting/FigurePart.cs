namespace JarLabel.Layout.Fitting;

/// <summary>A large figure from the top of its capitals to its baseline, the fraction stacked.</summary>
internal sealed class FigurePart(Fit fit, FigureBox box, Voice voice, Ladder ladder) : WordlessPart(fit, box.Frame)
{
    // Of the figure's height: the bar, the white above and below it, and before the fraction. The rest is shared by the two small figures.
    private const double BarShare = 0.075;
    private const double WhiteShare = 0.075;
    private const double SmallShare = (1 - BarShare - (2 * WhiteShare)) / 2;
    private const double BeforeShare = 0.09;

    private readonly string? text = fit.Text.Words.GetValueOrDefault(box.Word)?[0];

    internal override int Count => text is null ? 0 : 1;

    internal override IEnumerable<string> Texts => text is null ? [] : [text];

    private Figure Number => Figure.Of(text!);

    private double Points => ladder.Size;

    private double CapHeight => new Typography(Fit.Ruler, ladder, voice.Face).CapHeight;

    private double WholeWidth => Number.Whole.Length == 0 ? 0 : Wide(Number.Whole, Points) + (Number.HasFraction ? BeforeShare * CapHeight : 0);

    private double FractionWidth => Number.HasFraction
        ? Math.Max(Wide(Number.Over, Points * SmallShare), Wide(Number.Under, Points * SmallShare))
        : 0;

    internal override void Draw(Area area, Ink ink, List<Mark> marks)
    {
        var piece = area.Piece(NaturalWidth(), CapHeight, Frame.Across, Frame.Down);
        // Printed in white on white: whoever copies or searches the page's text finds the figure in one piece.
        if (Number.HasFraction)
            marks.Add(Words(text!, piece.X, piece.Bottom, Points * SmallShare, Ink.White));
        if (Number.Whole.Length > 0)
            marks.Add(Words(Number.Whole, piece.X, piece.Bottom, Points, ink));
        if (Number.HasFraction)
            DrawFraction(piece with { X = piece.X + WholeWidth, Width = FractionWidth }, ink, marks);
    }

    protected override double NaturalWidth() => WholeWidth + FractionWidth;

    protected override double NaturalHeight(double width)
    {
        Fit.NeedWidth(this, text!, NaturalWidth(), width);
        return CapHeight;
    }

    private void DrawFraction(Area area, Ink ink, List<Mark> marks)
    {
        marks.Add(Words(Number.Over, Centred(Number.Over, area), area.Y + (SmallShare * CapHeight), Points * SmallShare, ink));
        marks.Add(new BarMark(Frame.Name, area.X, area.Y + ((SmallShare + WhiteShare) * CapHeight), area.Width, BarShare * CapHeight, ink));
        marks.Add(Words(Number.Under, Centred(Number.Under, area), area.Bottom, Points * SmallShare, ink));
    }

    private double Centred(string small, Area area) => area.X + ((area.Width - Wide(small, Points * SmallShare)) / 2);

    private double Wide(string words, double points) => Fit.Ruler.Width(words, voice.Face, points);

    private TextMark Words(string words, double x, double baseline, double points, Ink ink) =>
        new(Frame.Name, x, baseline, words, voice.Face, points, ink);
}
