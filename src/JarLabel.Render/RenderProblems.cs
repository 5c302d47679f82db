namespace JarLabel.Render;

/// <summary>What a person can do wrong with a picture.</summary>
internal static class RenderProblems
{
    internal static Problem NotAPicture(string where) =>
        new("JL180", "This is not a picture that can be read; allowed are PNG, JPEG, WebP, GIF and BMP files, for example photo.jpg.", where);

    internal static Problem TooLarge(string where, int width, int height, int most) =>
        new("JL181", string.Create(CultureInfo.InvariantCulture, $"This picture has {width} × {height} dots; allowed are {most:N0} dots in all. Make it smaller, for example 4000 × 3000."), where);

    internal static Problem TooLong(string where, int most) =>
        new("JL381", string.Create(CultureInfo.InvariantCulture, $"This file goes on beyond {most:N0} bytes, which is as much as is read of a picture. Give a photo of labels, for example photo.jpg."), where);

    internal static Problem OtherKind(string where, string kind) =>
        new("JL380", $"This is {kind}, which is not read here; allowed are PNG, JPEG, WebP, GIF and BMP files. Save a copy as JPEG, for example photo.jpg, or let the camera store JPEG.", where);

    internal static Problem NoCode(string where) =>
        new("JL182", "No QR code can be read in this picture. Take it from nearer, sharp and with the whole white margin, or type the jar number beside the code, for example 142-5.", where);
}
