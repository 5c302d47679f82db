using System.Buffers.Binary;
using System.IO.Compression;

namespace JarLabel.Render.Png;

/// <summary>A PNG file (ISO/IEC 15948) that knows its resolution, so that a program printing it finds the paper size again.
/// Skia's encoder writes neither resolution nor one-bit files.</summary>
internal static class PngFile
{
    /// <summary>Writes the rows that <paramref name="fillRow"/> fills, from the top, packed as the shape says.</summary>
    internal static void Write(Stream target, PngShape shape, Action<int, Span<byte>> fillRow)
    {
        target.Write([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A]);
        WriteChunk(target, "IHDR"u8, Header(shape));
        WriteChunk(target, "pHYs"u8, Resolution(shape.Dpi));
        WriteChunk(target, "tEXt"u8, "Software\0JarLabel"u8);
        WriteChunk(target, "IDAT"u8, Compress(shape, fillRow));
        WriteChunk(target, "IEND"u8, []);
    }

    private static byte[] Header(PngShape shape)
    {
        var header = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(header, shape.Width);
        BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(4), shape.Height);
        header[8] = (byte)(shape.OneBit ? 1 : 8);
        header[9] = (byte)(shape.OneBit ? 0 : 2);
        return header;
    }

    private static byte[] Resolution(int dpi)
    {
        var dotsPerMetre = (int)Math.Round(dpi / 0.0254);
        var chunk = new byte[9];
        BinaryPrimitives.WriteInt32BigEndian(chunk, dotsPerMetre);
        BinaryPrimitives.WriteInt32BigEndian(chunk.AsSpan(4), dotsPerMetre);
        chunk[8] = 1;
        return chunk;
    }

    // Each row begins with its filter; 0 is none, which suits flat label art.
    private static byte[] Compress(PngShape shape, Action<int, Span<byte>> fillRow)
    {
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Optimal, leaveOpen: true))
        {
            var row = new byte[1 + shape.BytesPerRow];
            for (var y = 0; y < shape.Height; y++)
            {
                fillRow(y, row.AsSpan(1));
                zlib.Write(row);
            }
        }

        return packed.ToArray();
    }

    private static void WriteChunk(Stream target, ReadOnlySpan<byte> name, ReadOnlySpan<byte> data)
    {
        Span<byte> number = stackalloc byte[4];
        BinaryPrimitives.WriteInt32BigEndian(number, data.Length);
        target.Write(number);
        target.Write(name);
        target.Write(data);
        BinaryPrimitives.WriteUInt32BigEndian(number, ~Remainder(Remainder(0xFFFFFFFF, name), data));
        target.Write(number);
    }

    // The cyclic redundancy check of ISO/IEC 15948 annex D, polynomial 0xEDB88320, bit by bit: chunks are small.
    private static uint Remainder(uint crc, ReadOnlySpan<byte> bytes)
    {
        foreach (var value in bytes)
        {
            crc ^= value;
            for (var bit = 0; bit < 8; bit++)
                crc = (crc & 1) == 0 ? crc >> 1 : (crc >> 1) ^ 0xEDB88320;
        }

        return crc;
    }
}

/// <summary>The frame of a PNG: width and height in dots, dots per inch, and whether a dot is one bit (1 is white) or three bytes
/// (red, green, blue).</summary>
internal readonly record struct PngShape(int Width, int Height, int Dpi, bool OneBit)
{
    internal int BytesPerRow => OneBit ? (Width + 7) / 8 : Width * 3;
}
