using JarLabel.Render.Reading;

namespace JarLabel.Render;

/// <summary>Reads the QR codes in a photo or scan: several at once, turned any way.</summary>
public static class QrReader
{
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
    /// <param name="stop">Ends the looking early; what was found until then counts.</param>
    public static Result<string[]> Read(Stream photo, string where, CancellationToken stop = default)
    {
        return Photo.Read(photo, where).Then(read => Codes(read, stop) is { Length: > 0 } found ? Result<string[]>.Of(found) : RenderProblems.NoCode(where));
    }

    private static string[] Codes(Photo photo, CancellationToken stop)
    {
        var size = new SKSizeI(photo.Grey.Width, photo.Grey.Height);
        Vector2 Shown(Vector2 place) => ExifOrientation.Of(place, photo.Origin, size);
        return
        [
            .. CodeFinder.In(photo.Grey, stop).Select(code => (code.Text, Place: code.TopLeft(Shown)))
                .OrderBy(code => code.Place.Y).ThenBy(code => code.Place.X).Select(code => code.Text).Distinct(StringComparer.Ordinal),
        ];
    }
}
