namespace JarLabel.Layout.Fitting;

/// <summary>The code in its quiet zone.</summary>
internal sealed class QrPart : WordlessPart
{
    private readonly QrModules? modules;
    private readonly double module;
    private readonly double dot;

    internal QrPart(Fit fit, QrBox box)
        : base(fit, box.Frame)
    {
        modules = fit.Code;
        dot = 25.4 / fit.Dpi;
        module = WholeDots(box, fit.DotsLess) * dot;
    }

    internal override int Count => modules is null ? 0 : 1;

    internal override IEnumerable<string> Texts => ["code"];

    private double Side => (modules!.Size + (2 * QrEncoder.QuietZone)) * module;

    internal override void Draw(Area area, Ink ink, List<Mark> marks)
    {
        var zone = area.Piece(Side, Side, Frame.Across, Frame.Down);
        var quiet = QrEncoder.QuietZone * module;
        marks.Add(new QrMark(Frame.Name, OnDot(zone.X + quiet), OnDot(zone.Y + quiet), module, modules!));
    }

    protected override double NaturalWidth() => Side;

    protected override double NaturalHeight(double width)
    {
        Fit.NeedWidth(this, modules!.Payload, Side, width);
        return Side;
    }

    // The design's module, some dots less, but never less than it allows.
    private int WholeDots(QrBox box, int dotsLess)
    {
        var least = Math.Max(1, (int)Math.Ceiling((box.LeastModule / dot) - 0.02));
        return Math.Max(least, (int)Math.Floor((box.Module / dot) + 0.02) - dotsLess);
    }

    private double OnDot(double length) => Math.Round(length / dot) * dot;
}
