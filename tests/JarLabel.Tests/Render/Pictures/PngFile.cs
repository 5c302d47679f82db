using System.IO.Compression;

namespace JarLabel.Tests.Render.Pictures;

/// <summary>Writes PNG files of every kind row by row, so that very large ones cost little; as the format is commonly described (ISO/IEC 15948, from memory).
/// The pictures are read back by another project's decoder, so a mistake here would show.</summary>
internal static class PngFile
{
    public const int Grey = 0, Colour = 2, GreyAndClear = 4, ColourAndClear = 6;

    /// <summary>A file whose rows are made one by one.</summary>
    /// <param name="width">Dots in a row.</param>
    /// <param name="height">Rows.</param>
    /// <param name="depth">Bits a sample: 1, 8 or 16.</param>
    /// <param name="kind">What a dot is made of.</param>
    /// <param name="row">The packed bytes of a row.</param>
    public static byte[] Of(int width, int height, int depth, int kind, Func<int, byte[]> row)
    {
        using var data = new MemoryStream();
        using (var packed = new ZLibStream(data, CompressionLevel.Fastest, leaveOpen: true))
        {
            for (var y = 0; y < height; y++)
            {
                packed.WriteByte(0);
                packed.Write(row(y));
            }
        }

        return [.. Head(width, height, depth, kind), .. Chunk("IDAT", data.ToArray()), .. Chunk("IEND", [])];
    }

    /// <summary>One row again and again.</summary>
    public static byte[] Plain(int width, int height, int kind = Grey, byte light = 255)
    {
        var row = new byte[width * Samples(kind)];
        row.AsSpan().Fill(light);
        return Of(width, height, 8, kind, _ => row);
    }

    /// <summary>A file that begins as such a picture and holds nothing of it.</summary>
    public static byte[] HeadOf(int width, int height, int depth, int kind, bool interlaced = false) => [.. Head(width, height, depth, kind, interlaced), .. Chunk("IDAT", [])];

    private static int Samples(int kind) => kind switch { Grey => 1, GreyAndClear => 2, Colour => 3, _ => 4 };

    private static byte[] Head(int width, int height, int depth, int kind, bool interlaced = false)
    {
        var head = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(head, width);
        BinaryPrimitives.WriteInt32BigEndian(head.AsSpan(4), height);
        (head[8], head[9], head[12]) = ((byte)depth, (byte)kind, (byte)(interlaced ? 1 : 0));
        return [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, .. Chunk("IHDR", head)];
    }

    private static byte[] Chunk(string name, byte[] data)
    {
        var chunk = new byte[data.Length + 12];
        BinaryPrimitives.WriteInt32BigEndian(chunk, data.Length);
        Encoding.ASCII.GetBytes(name, chunk.AsSpan(4));
        data.CopyTo(chunk, 8);
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(data.Length + 8), Crc(chunk.AsSpan(4, data.Length + 4)));
        return chunk;
    }

    /// <summary>The check value at the end of each part of a file.</summary>
    public static uint Crc(ReadOnlySpan<byte> bytes)
    {
        var crc = 0xFFFFFFFF;
        foreach (var value in bytes)
        {
            crc ^= value;
            for (var bit = 0; bit < 8; bit++)
                crc = (crc & 1) == 0 ? crc >> 1 : (crc >> 1) ^ 0xEDB88320;
        }

        return ~crc;
    }
}
