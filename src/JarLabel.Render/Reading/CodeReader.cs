using ZXing;
using ZXing.Common;
using ZXing.QrCode.Internal;

namespace JarLabel.Render.Reading;

/// <summary>Reads the codes in a picture of black and white dots: as flat ones, and where that fails as bent round a jar.</summary>
internal static class CodeReader
{
    private static readonly Dictionary<DecodeHintType, object> Hints = new() { [DecodeHintType.TRY_HARDER] = true };

    private static readonly Decoder Decoder = new();

    /// <summary>What each says, and the middles of its three finder patterns and, where it was found, of its alignment pattern.</summary>
    internal static IEnumerable<(string Text, ResultPoint[] Points)> Read(Binarizer binarizer)
    {
        if (binarizer.BlackMatrix is not { } dots)
            yield break;
        foreach (var place in new ZXing.Multi.QrCode.Internal.MultiDetector(dots).detectMulti(Hints) ?? [])
        {
            if (TextOf(place.Bits) is { } flat)
                yield return (flat, place.Points);
            else if (Bend.Likely.Select(bend => bend.Sampled(dots, place)).OfType<BitMatrix>().Select(TextOf).FirstOrDefault(text => text is not null) is { } bent)
                yield return (bent, place.Points);
        }
    }

    private static string? TextOf(BitMatrix modules) => Decoder.decode(modules, Hints)?.Text;
}
