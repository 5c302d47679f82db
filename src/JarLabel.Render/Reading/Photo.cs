using System.Text;

namespace JarLabel.Render.Reading;

/// <summary>A picture that was opened and read, within what that may cost.</summary>
/// <param name="Grey">Its dots, as they are stored.</param>
/// <param name="Origin">How it is to be turned when shown.</param>
internal sealed record Photo(GreyPicture Grey, SKEncodedOrigin Origin)
{
    /// <summary>As much as 64 million dots come to in a bad case; what comes through a pipe has to be held.</summary>
    private const int MostBytes = 200_000_000, MostPiped = 64_000_000;

    private const int Head = 16;

    /// <summary>Opens it and reads its dots.</summary>
    internal static Result<Photo> Read(Stream stream, string where)
    {
        // Files of the system itself have no length until they are read.
        if (stream.CanSeek && stream.Length > 0)
            return stream.Length > MostBytes ? RenderProblems.TooLong(where, MostBytes) : Read(stream, where, 0);
        using var held = new MemoryStream();
        return Fits(stream, held) ? Read(held, where, held.Length) : RenderProblems.TooLong(where, MostPiped);
    }

    private static bool Fits(Stream stream, MemoryStream held)
    {
        var part = new byte[1 << 16];
        int read;
        while (held.Length <= MostPiped && (read = stream.Read(part)) > 0)
            held.Write(part, 0, read);
        return held.Length <= MostPiped;
    }

    private static Result<Photo> Read(Stream file, string where, long held)
    {
        var head = new byte[Head];
        file.Position = 0;
        if (OtherKind.Of(head.AsSpan(0, file.ReadAtLeast(head, Head, throwOnEndOfStream: false))) is { } kind)
            return RenderProblems.OtherKind(where, kind);
        file.Position = 0;
        using var codec = SKCodec.Create(new SKManagedStream(file, disposeManagedStream: false));
        return codec is null ? RenderProblems.NotAPicture(where) : Read(codec, file, where, held);
    }

    private static Result<Photo> Read(SKCodec codec, Stream file, string where, long held)
    {
        var at = file.Position;
        var allowed = PictureCost.Allowed(codec, file, codec.EncodedFormat == SKEncodedImageFormat.Webp ? file.Length : held);
        file.Position = at;
        if ((long)codec.Info.Width * codec.Info.Height > allowed)
            return RenderProblems.TooLarge(where, codec.Info.Width, codec.Info.Height, allowed);
        return PictureFile.Grey(codec) is { } grey ? new Photo(grey, codec.EncodedOrigin) : RenderProblems.NotAPicture(where);
    }
}

/// <summary>Kinds of files that people have codes in and that are not read here, known by their first bytes.</summary>
internal static class OtherKind
{
    /// <summary>What it is, in a word or two; null for anything else.</summary>
    internal static string? Of(ReadOnlySpan<byte> head) =>
        head.StartsWith("%PDF"u8) ? "a PDF file"
        : head.StartsWith("II*\0"u8) || head.StartsWith("MM\0*"u8) ? "a TIFF or camera raw picture"
        : head.StartsWith("\0\0\0\x0cJXL "u8) ? "a JPEG XL picture"
        : head.Length >= 12 && head[4..8].SequenceEqual("ftyp"u8) ? Brand(Encoding.Latin1.GetString(head[8..12]))
        : null;

    // ISO/IEC 23008-12 for pictures (from memory); what else begins so is a film.
    private static string Brand(string brand) => brand switch
    {
        "avif" or "avis" => "an AVIF picture",
        "heic" or "heix" or "heim" or "heis" or "hevc" or "hevx" or "mif1" or "msf1" => "a HEIC picture, as phones store them",
        _ => "a film",
    };
}
