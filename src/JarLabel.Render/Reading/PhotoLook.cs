using SkiaSharp;
using ZXing;

namespace JarLabel.Render.Reading;

/// <summary>One way of looking at a photo: larger or smaller, turned and pulled wide, with edges brought out.</summary>
/// <param name="Scale">How much larger.</param>
/// <param name="Wide">How much wider after turning: what was photographed from aside comes out square again.</param>
/// <param name="Turn">Turned before that, degrees.</param>
/// <param name="Edges">The reach, in dots looked at, within which edges are brought out; 0 for not at all.</param>
internal readonly record struct PhotoLook(double Scale, double Wide = 1, int Turn = 0, int Edges = 0)
{
    private const int SmallDots = 2_500_000;
    private const double PulledWide = 1.7;

    /// <summary>A small picture doubled shows turned codes of two or three dots a module, a large one halved loses the grain of paper and
    /// of a dim camera. The further looks need not see more than a code a hand's width away shows.</summary>
    internal static PhotoLook[] For(int width, int height)
    {
        var small = (double)width * height <= SmallDots;
        var plain = Math.Min(1, Math.Sqrt(SmallDots / ((double)width * height)));
        return
        [
            new(1), new(small ? 2 : 0.5),
            new(plain, Edges: 3), new(plain, Edges: 6),
            new(plain / 2, Edges: 2),
            .. from turn in (int[])[0, 45, 90, 135] select new PhotoLook(plain, PulledWide, turn),
        ];
    }

    /// <summary>What is seen, and the way back from there to the places in the photo.</summary>
    internal (LuminanceSource Light, SKMatrix Back) At(SKBitmap photo)
    {
        var there = SKMatrix.CreateScale((float)(Scale * Wide), (float)Scale).PreConcat(SKMatrix.CreateRotationDegrees(Turn));
        var seen = there.MapRect(new SKRect(0, 0, photo.Width, photo.Height));
        there = SKMatrix.CreateTranslation(-seen.Left, -seen.Top).PreConcat(there);
        var light = PhotoLight.Of(photo, there, new SKSizeI(Side(seen.Width), Side(seen.Height)), Edges);
        return (light, there.Invert());
    }

    private static int Side(float dots) => Math.Max(1, (int)Math.Round(dots));
}
