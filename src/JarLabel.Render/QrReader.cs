using JarLabel.Core;
using JarLabel.Render.Reading;
using SkiaSharp;

namespace JarLabel.Render;

/// <summary>Reads the QR codes in a photo or scan: several at once, turned any way.</summary>
public static class QrReader
{
    // A 50-megapixel phone camera passes; a small file that unpacks to gigabytes does not.
    private const int MostDots = 64_000_000;

    /// <summary>Reads a file.</summary>
    /// <param name="path">A PNG, JPEG, WebP, GIF or BMP file that exists.</param>
    public static Result<string[]> ReadFile(string path)
    {
        using var stream = File.OpenRead(path);
        return Read(stream, path);
    }

    /// <summary>Every distinct payload found, from the top of the picture to the bottom; at least one, else a problem.</summary>
    /// <param name="photo">The bytes of the picture.</param>
    /// <param name="where">What to call it in a problem, such as its file name.</param>
    public static Result<string[]> Read(Stream photo, string where)
    {
        ArgumentNullException.ThrowIfNull(photo);
        using var bytes = SKData.Create(photo);
        using var codec = bytes is null ? null : SKCodec.Create(bytes);
        if (codec is null)
            return RenderProblems.NotAPicture(where);
        if ((long)codec.Info.Width * codec.Info.Height > MostDots)
            return RenderProblems.TooLarge(where, codec.Info.Width, codec.Info.Height, MostDots);
        using var bitmap = SKBitmap.Decode(codec);
        if (bitmap is null)
            return RenderProblems.NotAPicture(where);
        var found = CodeFinder.Find(bitmap);
        return found.Length > 0 ? found : RenderProblems.NoCode(where);
    }
}
