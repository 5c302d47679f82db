namespace JarLabel.Tests.Render;

/// <summary>Pages of an invented shop, with every kind of mark on them.</summary>
internal static class Samples
{
    public const string Payload = "HTTP://192.168.1.20:5080/J/142-5.1";
    public const string Diamond = "M50 0L100 50L50 100L0 50ZM50 14L14 50L50 86L86 50Z";

    /// <summary>0.508 mm: whole dots at 300 and 600 dpi. With its quiet zone the code is 16.8 mm wide.</summary>
    public const double Module = 0.508;

    public static readonly PdfFacts Facts = new("Jar 142-5", new DateTimeOffset(2026, 3, 9, 10, 30, 0, TimeSpan.Zero), "JarLabel 0.1");

    public static readonly IReadOnlyList<string> Lines =
        ["1½ lb cut", "Garnet, dewaxed", "mixed 9 Mar 2026", "use by ≈ 9 Nov 2026", "Jar 142-5 · 180 g/L · 20 °C · 25 µm"];

    public static QrModules Code(string payload) => QrEncoder.Encode(payload);

    public static Page Label(string payload = Payload) => new(101.6, 50.8, Marks(payload));

    public static Page TextOnly(string text, Face face = Face.Regular, double points = 9) =>
        new(101.6, 50.8, [new TextMark("line", 3, 10, text, face, points, Ink.Black)]);

    public static byte[] Pdf(params IEnumerable<Page> pages)
    {
        using var stream = new MemoryStream();
        PdfRenderer.Write(stream, pages, Facts);
        return stream.ToArray();
    }

    private static IReadOnlyList<Mark> Marks(string payload) =>
    [
        new TextMark("cut", 3, 9, Lines[0], Face.Bold, 18, Ink.Black),
        new TextMark("grade", 3, 14, Lines[1], Face.SemiBold, 9, Ink.Black),
        new TextMark("mixed", 3, 18, Lines[2], Face.Regular, 8, Ink.Black),
        new TextMark("use by", 3, 22, Lines[3], Face.Regular, 8, Ink.Black),
        new TextMark("jar", 3, 26, Lines[4], Face.Regular, 7, Ink.Black),
        new BarMark("rule", 3, 28, 60, 0.3, Ink.Black),
        new BarMark("panel", 3, 30, 20, 8, Ink.Orange),
        new PathMark("sign", 28, 30, 0.1, Diamond, Ink.Red),
        new QrMark("code", 80, 5, Module, Code(payload)),
    ];
}
