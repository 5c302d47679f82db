using JarLabel.Layout.Designs;
using JarLabel.Layout.Marks;

namespace JarLabel.Layout.Fitting;

/// <summary>A line: lying in rows, standing in columns.</summary>
internal sealed class RulePart(Fit fit, RuleBox box) : WordlessPart(fit, box.Frame)
{
    internal override bool Speaks => false;

    private bool Lies => Parent is StackPart { Downwards: true };

    internal override void Draw(Area area, Ink ink, List<Mark> marks) =>
        marks.Add(Lies
            ? new BarMark(Frame.Name, area.X, area.Y, area.Width, box.Thickness, ink)
            : new BarMark(Frame.Name, area.X, area.Y, box.Thickness, area.Height, ink));

    protected override double NaturalWidth() => Lies ? 0 : box.Thickness;

    protected override double NaturalHeight(double width) => Lies ? box.Thickness : 0;
}
