using JarLabel.Layout;
using JarLabel.Layout.Marks;
using JarLabel.Layout.Sheets;
using JarLabel.Render;
using JarLabel.Tests.Layout;
using SkiaSharp;

namespace JarLabel.Tests.Render.Photos;

/// <summary>A label of one of our designs as it was printed, to be photographed; places on it in mm from the middle of its code.</summary>
internal sealed class PrintedLabel
{
    /// <summary>How bright the jar and the bench behind the label are.</summary>
    public const double Behind = 90;

    private const int Dpi = 600;
    private const double DotsPerMillimeter = Dpi / 25.4;

    private readonly byte[] dots;
    private readonly int width;
    private readonly int height;
    private readonly QrMark code;

    private PrintedLabel(Page page, QrMark code, string payload)
    {
        (this.code, Payload) = (code, payload);
        using var stream = new MemoryStream();
        PngRenderer.Write(stream, page, Dpi);
        using var read = SKBitmap.Decode(stream.ToArray());
        using var grey = read.Copy(SKColorType.Gray8);
        (width, height) = (grey.Width, grey.Height);
        dots = new byte[width * height];
        for (var y = 0; y < height; y++)
            grey.GetPixelSpan().Slice(y * grey.RowBytes, width).CopyTo(dots.AsSpan(y * width));
    }

    public string Payload { get; }

    /// <summary>Side of a module, mm.</summary>
    public double Module => code.Module;

    /// <summary>Side of the code without its quiet zone, mm.</summary>
    public double CodeSide => code.Module * code.Modules.Size;

    /// <summary>A design with what a jar usually has to say, and this in its code.</summary>
    public static PrintedLabel Of(string design, string payload)
    {
        var shape = LayoutFiles.Design(design);
        var area = new LabelArea(shape.Shape, 0, 0, shape.Width, shape.Height, 300);
        var placed = Composer.Place(SampleLabels.All["typical"] with { Code = payload }, shape, area, new SkiaRuler()).Require();
        return new PrintedLabel(new Page(shape.Width, shape.Height, placed.Marks), placed.Marks.OfType<QrMark>().Single(), payload);
    }

    /// <summary>How bright it is there.</summary>
    public double At(double x, double y)
    {
        var left = (int)Math.Floor((x + code.X + (CodeSide / 2)) * DotsPerMillimeter);
        var top = (int)Math.Floor((y + code.Y + (CodeSide / 2)) * DotsPerMillimeter);
        return left < 0 || top < 0 || left >= width || top >= height ? Behind : dots[(top * width) + left];
    }
}
