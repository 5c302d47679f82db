using JarLabel.Layout.Codes;
using JarLabel.Layout.Designs;
using JarLabel.Layout.Marks;

namespace JarLabel.Layout.Fitting;

/// <summary>The code in its quiet zone.</summary>
internal sealed class QrPart : WordlessPart
{
    private readonly QrModules? modules;
    private readonly Ladder ladder;
    private readonly double dot;

    internal QrPart(Fit fit, QrBox box, int dpi)
        : base(fit, box.Frame)
    {
        modules = fit.Text.Code is { } payload ? QrEncoder.Encode(payload) : null;
        dot = 25.4 / dpi;
        ladder = new Ladder(WholeDots(box));
        fit.Ladders.Insert(0, ladder);
    }

    internal override int Count => modules is null ? 0 : 1;

    internal override IEnumerable<string> Texts => ["code"];

    private double Side => (modules!.Size + (2 * QrEncoder.QuietZone)) * ladder.Size;

    internal override void Draw(Area area, Ink ink, List<Mark> marks)
    {
        var zone = area.Piece(Side, Side, Frame.Across, Frame.Down);
        var quiet = QrEncoder.QuietZone * ladder.Size;
        marks.Add(new QrMark(Frame.Name, OnDot(zone.X + quiet), OnDot(zone.Y + quiet), ladder.Size, modules!));
    }

    protected override double NaturalWidth() => Side;

    protected override double NaturalHeight(double width)
    {
        Fit.NeedWidth(this, modules!.Payload, Side, width);
        return Side;
    }

    private double[] WholeDots(QrBox box)
    {
        var least = Math.Max(1, (int)Math.Ceiling((box.LeastModule / dot) - 0.02));
        var most = Math.Max(least, (int)Math.Floor((box.Module / dot) + 0.02));
        return [.. Enumerable.Range(least, most - least + 1).Reverse().Select(dots => dots * dot)];
    }

    private double OnDot(double length) => Math.Round(length / dot) * dot;
}
