namespace JarLabel.Tests.Render.Pictures;

/// <summary>Pictures of one code in files of many kinds.</summary>
internal static class OddFiles
{
    private const int Module = 6;

    /// <summary>A code on white paper, and white all round.</summary>
    public static Picture Code(string payload, int margin = 10)
    {
        var code = QrEncoder.Encode(payload);
        var side = (code.Size + (2 * margin)) * Module;
        var picture = new Picture(side, side);
        for (var y = 0; y < side; y++)
        {
            for (var x = 0; x < side; x++)
            {
                var (row, column) = ((y / Module) - margin, (x / Module) - margin);
                picture[x, y] = row >= 0 && column >= 0 && row < code.Size && column < code.Size && code[row, column] ? 0 : 255;
            }
        }

        return picture;
    }

    /// <summary>One bit a dot.</summary>
    public static byte[] OneBit(Picture picture) => PngFile.Of(picture.Width, picture.Height, 1, PngFile.Grey, y =>
    {
        var row = new byte[(picture.Width + 7) / 8];
        for (var x = 0; x < picture.Width; x++)
            row[x / 8] |= (byte)(picture[x, y] > 127 ? 0x80 >> (x % 8) : 0);
        return row;
    });

    /// <summary>Sixteen bits of each colour.</summary>
    public static byte[] SixteenBit(Picture picture) => PngFile.Of(picture.Width, picture.Height, 16, PngFile.Colour, y =>
        [.. Enumerable.Range(0, picture.Width).SelectMany(x => Enumerable.Repeat((byte)picture[x, y], 6))]);

    /// <summary>Black where the code is black, clear everywhere else.</summary>
    public static byte[] Clear(Picture picture) => PngFile.Of(picture.Width, picture.Height, 8, PngFile.ColourAndClear, y =>
        [.. Enumerable.Range(0, picture.Width).SelectMany(x => new byte[] { 0, 0, 0, (byte)(255 - picture[x, y]) })]);

    /// <summary>An animation of two pictures, the second all black; each number is stored at full length (GIF89a, from memory).</summary>
    public static byte[] AnimatedGif(Picture picture)
    {
        byte[] size = [(byte)picture.Width, (byte)(picture.Width >> 8), (byte)picture.Height, (byte)(picture.Height >> 8)];
        byte[] Frame(Func<int, bool> white) => [0x21, 0xF9, 4, 0, 10, 0, 0, 0, 0x2C, 0, 0, 0, 0, .. size, 0, 7, .. Blocks(Numbers(picture.Width * picture.Height, white)), 0];
        return
        [
            .. "GIF89a"u8, .. size, 0xF6, 0, 0, .. Enumerable.Range(0, 128).SelectMany(i => Enumerable.Repeat((byte)(i == 0 ? 0 : 255), 3)),
            .. Frame(i => picture[i % picture.Width, i / picture.Width] > 127), .. Frame(_ => false), 0x3B,
        ];
    }

    /// <summary>An animation of two pictures, the second all black, put together from two that Skia wrote (WebP container, from memory).</summary>
    public static byte[] AnimatedWebP(Picture picture)
    {
        using var black = new SKBitmap(picture.Width, picture.Height);
        black.Erase(SKColors.Black);
        using var second = black.Encode(SKEncodedImageFormat.Webp, 100);
        byte[] size = [(byte)(picture.Width - 1), (byte)((picture.Width - 1) >> 8), 0, (byte)(picture.Height - 1), (byte)((picture.Height - 1) >> 8), 0];
        byte[] Frame(byte[] still) => Part("ANMF", [0, 0, 0, 0, 0, 0, .. size, 100, 0, 0, 0, .. still[12..]]);
        return Part("RIFF", [.. "WEBP"u8, .. Part("VP8X", [2, 0, 0, 0, .. size]), .. Part("ANIM", new byte[6]), .. Frame(picture.File(SKEncodedImageFormat.Webp)), .. Frame(second.ToArray())]);
    }

    /// <summary>A JPEG whose camera says how to turn it: 6 for a quarter to the right (Exif orientation, from memory).</summary>
    public static byte[] Turned(byte[] jpeg, byte orientation)
    {
        byte[] exif = [.. "Exif\0\0MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0"u8, orientation, 0, 0, 0, 0, 0, 0];
        return [0xFF, 0xD8, 0xFF, 0xE1, 0, (byte)(exif.Length + 2), .. exif, .. jpeg[2..]];
    }

    /// <summary>A JPEG that begins as a picture of that size, stored at once or in several passes, and holds nothing of it (ITU-T T.81, from memory).</summary>
    public static byte[] JpegHead(int width, int height, bool passes) =>
    [
        0xFF, 0xD8, 0xFF, (byte)(passes ? 0xC2 : 0xC0), 0, 17, 8, (byte)(height >> 8), (byte)height, (byte)(width >> 8), (byte)width, 3, 1, 0x11, 0, 2, 0x11, 0, 3, 0x11, 0,
        0xFF, 0xDA, 0, 12, 3, 1, 0, 2, 0, 3, 0, 0, 63, 0, 0xFF, 0xD9,
    ];

    private static byte[] Part(string name, byte[] data)
    {
        var part = new byte[8 + data.Length + (data.Length % 2)];
        Encoding.ASCII.GetBytes(name, part);
        BinaryPrimitives.WriteInt32LittleEndian(part.AsSpan(4), data.Length);
        data.CopyTo(part, 8);
        return part;
    }

    // Eight bits a number: the dots' colours, and before the numbers would grow longer the word to begin anew.
    private static IEnumerable<byte> Numbers(int dots, Func<int, bool> white) =>
        Enumerable.Range(0, dots).SelectMany(i => i % 120 == 0 ? new byte[] { 128, (byte)(white(i) ? 1 : 0) } : [(byte)(white(i) ? 1 : 0)]).Append((byte)129);

    private static byte[] Blocks(IEnumerable<byte> bytes) => [.. bytes.Chunk(255).SelectMany(block => (byte[])[(byte)block.Length, .. block])];
}
