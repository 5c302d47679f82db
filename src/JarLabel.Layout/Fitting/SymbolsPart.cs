namespace JarLabel.Layout.Fitting;

/// <summary>Hazard pictograms or safety signs.</summary>
internal sealed class SymbolsPart : WordlessPart
{
    private readonly SymbolsBox box;
    private readonly IReadOnlyList<string> codes;
    private readonly Ladder ladder;

    internal SymbolsPart(Fit fit, SymbolsBox box)
        : base(fit, box.Frame)
    {
        this.box = box;
        codes = IsWanted(box, fit.Text) ? box.Codes.Count > 0 ? box.Codes : fit.Text.Pictograms : [];
        ladder = new Ladder(box.Sizes);
        fit.Ladders.Add(ladder);
    }

    internal override int Count => codes.Count > 0 ? 1 : 0;

    internal override IEnumerable<string> Texts => codes;

    private int PerRow => Math.Min(box.PerRow, codes.Count);

    private int Rows => (codes.Count + PerRow - 1) / PerRow;

    internal override void Draw(Area area, Ink ink, List<Mark> marks)
    {
        var block = area.Piece(NaturalWidth(), Span(Rows), Frame.Across, Frame.Down);
        foreach (var (index, code) in codes.Index())
        {
            var (row, column) = Math.DivRem(index, PerRow);
            Symbol.Find(code)?.Draw(Frame.Name, block.X + (column * (ladder.Size + box.Gap)), block.Y + (row * (ladder.Size + box.Gap)), ladder.Size, marks);
        }
    }

    private static bool IsWanted(SymbolsBox box, LabelText text) =>
        (box.With is not { } word || text.Words.GetValueOrDefault(word) is { Count: > 0 })
        && (box.Unless is not { } pictogram || !text.Pictograms.Contains(pictogram));

    protected override double NaturalWidth() => Span(PerRow);

    protected override double NaturalHeight(double width)
    {
        Fit.NeedWidth(this, () => string.Join(' ', codes), NaturalWidth(), width);
        return Span(Rows);
    }

    private double Span(int count) => (count * (ladder.Size + box.Gap)) - box.Gap;
}
