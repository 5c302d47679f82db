using JarLabel.Benchmarks.Labels;
using JarLabel.Layout.Codes;
using JarLabel.Tests.Render.Photos;

namespace JarLabel.Benchmarks.Photos;

/// <summary>Ten kinds of photos that a shop takes of its labels, and one that shows no code, as a phone or a scanner stores them.</summary>
internal static class TenPhotos
{
    private const int Phone = 3464, LargePhone = 4062;

    /// <summary>A sheet of labels, and how much of the bench shows around it, mm.</summary>
    private const double SheetShown = 341;

    /// <summary>Name, how many codes it shows, and how it is taken.</summary>
    internal static (string Name, int Codes, Func<byte[]> Take)[] All { get; } =
    [
        ("whole sheet, turned, slightly blurred", 30, () => Sheet(LargePhone, SheetShown, new Camera { Turn = 12, Blur = 0.3, Noise = 3 }).File(SKEncodedImageFormat.Jpeg)),
        ("near, straight on", 1, () => Jar(3, new Camera { Turn = 8 })),
        ("from aside", 1, () => Jar(4, new Camera { Tilt = 50, TiltAxis = 30, Turn = 20 })),
        ("round a jar", 1, () => Jar(4, new Camera { Jar = 30, Tilt = 10, Turn = 5 })),
        ("dim", 1, () => Jar(5, new Camera { White = 40, Noise = 5, Turn = 170 })),
        ("grain", 1, () => Jar(8, new Camera { Noise = 40, Turn = 33 })),
        ("light from one side", 1, () => Jar(5, new Camera { Shade = 0.1, Noise = 3, Turn = 80 })),
        ("from afar", 1, () => Jar(40, new Camera { Turn = 30, Noise = 3 })),
        ("a shelf of six jars", 6, Shelf),
        ("scan of a sheet, 300 dpi, PNG", 30, () => Sheet(3_350, 3_350 / 300.0 * 25.4, new Camera { Turn = 1, Noise = 2 }).File()),
        ("no code", 0, () => new Camera { DotsPerModule = 20, Field = Phone / 20.0 / 25, Turn = 12, Noise = 6 }.Take(Label(1, shown: false)).File(SKEncodedImageFormat.Jpeg)),
    ];

    private static byte[] Jar(double field, Camera camera)
    {
        var label = Label(142);
        return (camera with { Field = field, DotsPerModule = Phone / (field * label.CodeSide / label.Module), Blur = 0.1 }).Take(label).File(SKEncodedImageFormat.Jpeg);
    }

    private static byte[] Shelf() => Picture.Tiled(3, [.. Enumerable.Range(1, 6).Select(i =>
        new Camera { DotsPerModule = 18, Field = 2.5, Jar = 70, Turn = (i * 31) - 60, Tilt = 15, TiltAxis = i * 40, Blur = 0.2, Noise = 6, White = 90 + (i * 20), Seed = i }.Take(Label(i)))])
        .File(SKEncodedImageFormat.Jpeg);

    private static Picture Sheet(int dots, double millimeters, Camera camera)
    {
        Mark[] marks = [.. Enumerable.Range(0, Content.PerPage).SelectMany(i => Marks(i))];
        var sheet = new PrintedLabel(new Page(Content.PageWidth, Content.PageHeight, marks), marks.OfType<QrMark>().First(), "", (Content.PageWidth / 2, Content.PageHeight / 2));
        return (camera with { Field = millimeters / sheet.CodeSide, DotsPerModule = dots * sheet.Module / millimeters }).Take(sheet);
    }

    private static PrintedLabel Label(int number, bool shown = true)
    {
        Mark[] marks = [.. Marks(number - 1)];
        var (x, y) = Content.Corner(number - 1);
        Mark[] moved = [.. marks.Where(mark => shown || mark is not QrMark)];
        return new PrintedLabel(new Page(x + 70, y + 26, moved), marks.OfType<QrMark>().Single(), Content.Payload(number - 1));
    }

    private static IEnumerable<Mark> Marks(int label)
    {
        var (x, y) = Content.CodeCorner(label);
        return [.. Content.Lines(label), new QrMark("code", x, y, Content.Module, QrEncoder.Encode(Content.Payload(label)))];
    }
}
