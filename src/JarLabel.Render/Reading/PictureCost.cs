namespace JarLabel.Render.Reading;

/// <summary>What reading a picture costs in memory, before it is read: each kind of file keeps so many bytes of every dot at once.</summary>
internal static class PictureCost
{
    /// <summary>A 50-megapixel phone camera passes; a small file that unpacks to gigabytes does not.</summary>
    private const int MostDots = 64_000_000;

    private const double MostBytes = 240e6;

    /// <summary>How many dots such a picture may have.</summary>
    /// <param name="codec">The picture, of which only the head was read.</param>
    /// <param name="file">The same file, to look at its head.</param>
    /// <param name="held">How much of memory the file itself takes.</param>
    internal static int Allowed(SKCodec codec, Stream file, long held) => (int)Math.Min(MostDots, (MostBytes - held) / PerDot(codec, file));

    private static double PerDot(SKCodec codec, Stream file) => codec.EncodedFormat switch
    {
        // Grey dots, and once more two thirds of them smaller and without grain.
        SKEncodedImageFormat.Jpeg => Math.Max(2.8, 1 + JpegHead.HeldPerDot(file)),
        SKEncodedImageFormat.Png => Png(codec.Info.ColorType == SKColorType.Gray8, file),
        SKEncodedImageFormat.Bmp => 4,
        // The decoder's own colours, and ours.
        _ => 9,
    };

    // The head has a fixed shape (ISO/IEC 15948, IHDR; from memory): bits a sample at 24, interlacing at 28.
    private static double Png(bool grey, Stream file)
    {
        Span<byte> head = stackalloc byte[29];
        file.Position = 0;
        var interlaced = file.ReadAtLeast(head, head.Length, throwOnEndOfStream: false) == head.Length && head[28] != 0;
        return (grey ? 2.8 : 4) + (!interlaced ? 0 : head[24] == 16 ? 8 : 4);
    }
}
