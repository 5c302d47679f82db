namespace JarLabel.Tests.Render.Photos;

/// <summary>A label, or a sheet of them, as it was printed, to be photographed; places on it in mm from the middle of its code.</summary>
internal sealed class PrintedLabel
{
    /// <summary>How bright the jar and the bench behind the label are.</summary>
    public const double Behind = 90;

    private const int Dpi = 600;
    private const double DotsPerMillimeter = Dpi / 25.4;

    private readonly byte[] dots;
    private readonly int width;
    private readonly int height;
    private readonly (double X, double Y) middle;

    /// <summary>A page, one of its codes and what that says; the middle is the code's unless it is said, mm from the left top corner.</summary>
    public PrintedLabel(Page page, QrMark code, string payload, (double X, double Y)? middle = null)
    {
        (Payload, Module, CodeSide) = (payload, code.Module, code.Module * code.Modules.Size);
        this.middle = middle ?? (code.X + (CodeSide / 2), code.Y + (CodeSide / 2));
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
    public double Module { get; }

    /// <summary>Side of the code without its quiet zone, mm.</summary>
    public double CodeSide { get; }

    /// <summary>How bright it is there.</summary>
    public double At(double x, double y)
    {
        var left = (int)Math.Floor((x + middle.X) * DotsPerMillimeter);
        var top = (int)Math.Floor((y + middle.Y) * DotsPerMillimeter);
        return left < 0 || top < 0 || left >= width || top >= height ? Behind : dots[(top * width) + left];
    }
}
