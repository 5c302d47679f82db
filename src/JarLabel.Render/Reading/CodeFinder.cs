using SkiaSharp;
using ZXing;
using ZXing.Common;

namespace JarLabel.Render.Reading;

/// <summary>Finds the codes in one photo: looks at it in several ways, each with two ways of telling black from white. What one look misses
/// another often sees.</summary>
internal static class CodeFinder
{
    /// <summary>Every distinct payload, from the top of the picture to the bottom; empty when none is found.</summary>
    internal static string[] Find(SKBitmap photo)
    {
        var found = PhotoLook.For(photo.Width, photo.Height).SelectMany(look => Seen(photo, look));
        return [.. found.OrderBy(code => code.Place.Y).ThenBy(code => code.Place.X).Select(code => code.Payload).Distinct(StringComparer.Ordinal)];
    }

    private static IEnumerable<(string Payload, SKPoint Place)> Seen(SKBitmap photo, PhotoLook look)
    {
        var (light, back) = look.At(photo);
        var found = CodeReader.Read(new HybridBinarizer(light)).Concat(CodeReader.Read(new GlobalHistogramBinarizer(light)));
        return [.. found.Select(code => (code.Text, TopLeft(code.Points, back)))];
    }

    private static SKPoint TopLeft(ResultPoint[] points, SKMatrix back)
    {
        var there = Array.ConvertAll(points, point => back.MapPoint(point.X, point.Y));
        return new SKPoint(there.Min(point => point.X), there.Min(point => point.Y));
    }
}
