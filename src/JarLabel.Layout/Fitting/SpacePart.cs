using JarLabel.Layout.Designs;
using JarLabel.Layout.Marks;

namespace JarLabel.Layout.Fitting;

/// <summary>White.</summary>
internal sealed class SpacePart(Fit fit, SpaceBox box) : WordlessPart(fit, box.Frame)
{
    internal override bool Speaks => false;

    internal override void Draw(Area area, Ink ink, List<Mark> marks)
    {
    }

    protected override double NaturalWidth() => 0;

    protected override double NaturalHeight(double width) => 0;
}
