using SkiaSharp;
using ZXing;
using ZXing.Common;
using ZXing.Multi.QrCode;

namespace JarLabel.Render.Reading;

/// <summary>Finds the codes in one photo at two sizes, each with two ways of telling black from white. What one look misses another
/// often sees: a small picture doubled shows turned codes of two or three dots a module, a large one halved loses the grain of paper and
/// of a dim camera.</summary>
internal static class CodeFinder
{
    private const int SmallDots = 2_500_000;

    private static readonly Dictionary<DecodeHintType, object> Hints = new() { [DecodeHintType.TRY_HARDER] = true };

    /// <summary>Every distinct payload, from the top of the picture to the bottom; empty when none is found.</summary>
    internal static string[] Find(SKBitmap photo)
    {
        var scale = photo.Width * photo.Height <= SmallDots ? 2 : 0.5;
        var found = Look(photo, 1).Concat(Look(photo, scale));
        return [.. found.OrderBy(code => code.Top).ThenBy(code => code.Left).Select(code => code.Payload).Distinct(StringComparer.Ordinal)];
    }

    private static IEnumerable<(string Payload, double Top, double Left)> Look(SKBitmap photo, double scale)
    {
        using var scaled = Scaled(photo, scale);
        var light = PhotoLight.Of(scaled);
        var found = Decode(new HybridBinarizer(light)).Concat(Decode(new GlobalHistogramBinarizer(light)));
        return [.. found.Select(code => (code.Text, code.ResultPoints.Min(point => point.Y) / scale, code.ResultPoints.Min(point => point.X) / scale))];
    }

    private static SKBitmap Scaled(SKBitmap photo, double scale) =>
        photo.Resize(new SKSizeI(Side(photo.Width, scale), Side(photo.Height, scale)), Sampling(scale))
        ?? throw new InvalidOperationException("The picture could not be scaled.");

    private static int Side(int dots, double scale) => Math.Max(1, (int)Math.Round(dots * scale));

    private static SKSamplingOptions Sampling(double scale) =>
        scale > 1 ? new SKSamplingOptions(SKCubicResampler.Mitchell) : new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear);

    private static ZXing.Result[] Decode(Binarizer binarizer) =>
        new QRCodeMultiReader().decodeMultiple(new BinaryBitmap(binarizer), Hints) ?? [];
}
