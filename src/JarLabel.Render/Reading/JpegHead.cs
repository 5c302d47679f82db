namespace JarLabel.Render.Reading;

/// <summary>What the head of a JPEG file says about how it is stored (ITU-T T.81, annex B; from memory).</summary>
internal static class JpegHead
{
    private const int MostSegments = 2000;
    private const int Mark = 0xFF, StartOfScan = 0xDA;

    /// <summary>A picture stored in several passes is kept whole, two bytes a number, until the last pass: how many bytes of each dot. 0 for one that is
    /// stored from top to bottom.</summary>
    internal static double HeldPerDot(Stream file)
    {
        file.Position = 2;
        var frame = (Passes: false, Parts: 0, PerDot: 0.0);
        for (var i = 0; i < MostSegments && Next(file) is var (mark, segment); i++)
        {
            if (mark == StartOfScan)
                return segment.Length > 0 && (frame.Passes || segment[0] < frame.Parts) ? frame.PerDot : 0;
            if (mark is >= 0xC0 and <= 0xCF and not (0xC4 or 0xC8 or 0xCC))
                frame = Frame(mark, segment);
        }

        return frame.PerDot;
    }

    private static (int Mark, byte[] Segment)? Next(Stream file)
    {
        int mark;
        while ((mark = file.ReadByte()) is Mark or 0)
        {
        }

        var (high, low) = (file.ReadByte(), file.ReadByte());
        if (mark < 0 || low < 0)
            return null;
        var segment = new byte[Math.Max(0, (high << 8) + low - 2)];
        return file.ReadAtLeast(segment, segment.Length, throwOnEndOfStream: false) == segment.Length ? (mark, segment) : null;
    }

    // Bits, height, width, how many colours; then of each its name, how finely it is stored across and down, and its table.
    private static (bool Passes, int Parts, double PerDot) Frame(int mark, byte[] segment)
    {
        var parts = segment.Length > 5 ? Math.Min(segment[5], (segment.Length - 6) / 3) : 0;
        var (all, finest) = (0, 1);
        for (var i = 0; i < parts; i++)
        {
            var fine = segment[7 + (3 * i)];
            all += (fine >> 4) * (fine & 15);
            finest = Math.Max(finest, (fine >> 4) * (fine & 15));
        }

        return ((mark & 3) == 2, parts, 2.0 * all / finest);
    }
}
