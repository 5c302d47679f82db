namespace JarLabel.Tests.Render.Photos;

/// <summary>A grey picture: 0 black, 255 white.</summary>
internal sealed class Picture(int width, int height)
{
    private readonly double[] dots = new double[width * height];

    public int Width => width;

    public int Height => height;

    public double this[int x, int y]
    {
        get => dots[(Math.Clamp(y, 0, height - 1) * width) + Math.Clamp(x, 0, width - 1)];
        set => dots[(y * width) + x] = value;
    }

    /// <summary>Gaussian blur; its standard deviation in dots.</summary>
    public Picture Blurred(double sigma) => sigma <= 0 ? this : Smeared(sigma, 1, 0).Smeared(sigma, 0, 1);

    /// <summary>With grain of that standard deviation.</summary>
    public Picture Grained(double sigma, int seed)
    {
        var random = new Random(seed);
        return Each((x, y) => this[x, y] + (sigma * Normal(random)));
    }

    /// <summary>Several pictures in rows of so many.</summary>
    public static Picture Tiled(int across, params IReadOnlyList<Picture> parts)
    {
        var (w, h) = (parts.Max(p => p.Width), parts.Max(p => p.Height));
        var down = (parts.Count + across - 1) / across;
        return new Picture(w * across, h * down).Each((x, y) => ((y / h * across) + (x / w)) is var i && i < parts.Count ? parts[i][x % w, y % h] : PrintedLabel.Behind);
    }

    /// <summary>As a file.</summary>
    public byte[] File(SKEncodedImageFormat format = SKEncodedImageFormat.Png)
    {
        using var bitmap = new SKBitmap(width, height, SKColorType.Gray8, SKAlphaType.Opaque);
        var rows = bitmap.GetPixelSpan();
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
                rows[(y * bitmap.RowBytes) + x] = (byte)Math.Clamp(Math.Round(this[x, y]), 0, 255);
        }

        using var data = bitmap.Encode(format, 85);
        return data.ToArray();
    }

    private Picture Smeared(double sigma, int dx, int dy)
    {
        var reach = (int)Math.Ceiling(3 * sigma);
        var weights = Enumerable.Range(-reach, (2 * reach) + 1).Select(i => Math.Exp(-i * i / (2 * sigma * sigma))).ToArray();
        var sum = weights.Sum();
        return Each((x, y) =>
        {
            var light = 0.0;
            for (var i = 0; i < weights.Length; i++)
                light += weights[i] * this[x + ((i - reach) * dx), y + ((i - reach) * dy)];
            return light / sum;
        });
    }

    private Picture Each(Func<int, int, double> dot)
    {
        var made = new Picture(width, height);
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
                made[x, y] = dot(x, y);
        }

        return made;
    }

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
