namespace JarLabel.Tests.Render;

/// <summary>A page as dots, as another program drew it: a binary portable pixmap or graymap, 8 bits a colour (netpbm's formats P5 and P6).</summary>
internal sealed class Dots
{
    private const byte Dark = 128;

    private readonly byte[] bytes;
    private readonly int start;
    private readonly int colours;

    private Dots(byte[] bytes, int start, int colours, int width, int height)
    {
        this.bytes = bytes;
        this.start = start;
        this.colours = colours;
        Width = width;
        Height = height;
    }

    internal int Width { get; }

    internal int Height { get; }

    /// <summary>The brightness values of the dots, three a dot in colour.</summary>
    internal ReadOnlySpan<byte> Values => bytes.AsSpan(start, Width * Height * colours);

    /// <summary>True when the dot is nearer to black than to white; paper beyond the edge is white.</summary>
    internal bool this[int x, int y] => x >= 0 && y >= 0 && x < Width && y < Height && bytes[start + (((y * Width) + x) * colours)] < Dark;

    /// <summary>A picture of ours.</summary>
    internal static Dots Of(byte[] png)
    {
        using var picture = SKBitmap.Decode(png);
        return new Dots([.. picture.Pixels.Select(dot => dot.Green)], 0, 1, picture.Width, picture.Height);
    }

    internal static Dots Read(string file)
    {
        var bytes = File.ReadAllBytes(file);
        var at = 0;
        var kind = Word(bytes, ref at);
        Assert.Contains(kind, (string[])["P5", "P6"]);
        var (width, height) = (Number(bytes, ref at), Number(bytes, ref at));
        Assert.Equal(255, Number(bytes, ref at));
        return new Dots(bytes, at, kind == "P6" ? 3 : 1, width, height);
    }

    /// <summary>Black runs along a line of dots: where each begins and how long it is.</summary>
    internal static List<(int From, int Length)> Runs(int count, Func<int, bool> isBlack)
    {
        var runs = new List<(int, int)>();
        for (int at = 0, from = -1; at <= count; at++)
        {
            var black = at < count && isBlack(at);
            if (black && from < 0)
                from = at;
            if (black || from < 0)
                continue;
            runs.Add((from, at - from));
            from = -1;
        }

        return runs;
    }

    private static int Number(byte[] bytes, ref int at) => int.Parse(Word(bytes, ref at), CultureInfo.InvariantCulture);

    // One blank ends each word; after the last one the dots begin. A remark goes from a number sign to the end of its line.
    private static string Word(byte[] bytes, ref int at)
    {
        while (char.IsWhiteSpace((char)bytes[at]) || bytes[at] == '#')
            at = bytes[at] == '#' ? Array.IndexOf(bytes, (byte)'\n', at) : at + 1;
        var from = at;
        while (!char.IsWhiteSpace((char)bytes[at]))
            at++;
        return Encoding.ASCII.GetString(bytes, from, at++ - from);
    }
}
