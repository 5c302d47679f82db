namespace JarLabel.Render.Reading;

/// <summary>A picture of grey dots, 0 black, row by row. Places in it are counted in dots from its left top corner, so that the middle of the first dot is (0.5, 0.5).</summary>
/// <param name="width">Dots in a row.</param>
/// <param name="height">Rows.</param>
/// <param name="dots">One byte a dot.</param>
internal sealed class GreyPicture(int width, int height, byte[] dots)
{
    internal int Width => width;

    internal int Height => height;

    internal byte[] Dots => dots;

    internal static GreyPicture Of(int width, int height) => new(width, height, GC.AllocateUninitializedArray<byte>(width * height));

    /// <summary>How bright it is there, between dots as well; beyond the edge as at the edge.</summary>
    internal float At(float x, float y)
    {
        x = Math.Clamp(x - 0.5f, 0, width - 1);
        y = Math.Clamp(y - 0.5f, 0, height - 1);
        var (left, top) = ((int)x, (int)y);
        var (right, down) = (left + 1 < width ? 1 : 0, top + 1 < height ? width : 0);
        var (across, below) = (x - left, y - top);
        var at = (top * width) + left;
        var upper = dots[at] + (across * (dots[at + right] - dots[at]));
        var lower = dots[at + down] + (across * (dots[at + down + right] - dots[at + down]));
        return upper + (below * (lower - upper));
    }

    /// <summary>Half as wide and high: four dots become one.</summary>
    internal GreyPicture Halved()
    {
        var half = Of(Math.Max(1, width / 2), Math.Max(1, height / 2));
        for (var y = 0; y < half.Height; y++)
        {
            var row = dots.AsSpan(2 * y * width, width);
            HalveRows(row, (2 * y) + 1 < height ? dots.AsSpan(((2 * y) + 1) * width, width) : row, half.Dots.AsSpan(y * half.Width, half.Width));
        }

        return half;
    }

    /// <summary>Twice as wide and high, with soft passages between the dots.</summary>
    internal GreyPicture Doubled()
    {
        var twice = Of(2 * width, 2 * height);
        for (var y = 0; y < twice.Height; y++)
        {
            for (var x = 0; x < twice.Width; x++)
                twice.Dots[(y * twice.Width) + x] = (byte)(At((x + 0.5f) / 2, (y + 0.5f) / 2) + 0.5f);
        }

        return twice;
    }

    /// <summary>Each dot the mean of itself and its eight neighbours: grain goes down to a third.</summary>
    internal GreyPicture Smoothed()
    {
        var smooth = Of(width, height);
        var columns = new ushort[width + 2];
        for (var y = 0; y < height; y++)
        {
            ColumnSums(y, columns);
            var row = smooth.Dots.AsSpan(y * width, width);
            for (var x = 0; x < row.Length; x++)
                row[x] = (byte)(((columns[x] + columns[x + 1] + columns[x + 2]) * 7282) >> 16);
        }

        return smooth;
    }

    /// <summary>The part from there on, as large as that at most.</summary>
    internal GreyPicture Part(int left, int top, int wide, int high)
    {
        var part = Of(Math.Min(wide, width - left), Math.Min(high, height - top));
        for (var y = 0; y < part.Height; y++)
            dots.AsSpan(((top + y) * width) + left, part.Width).CopyTo(part.Dots.AsSpan(y * part.Width));
        return part;
    }

    private void ColumnSums(int y, ushort[] columns)
    {
        var above = dots.AsSpan(Math.Max(y - 1, 0) * width, width);
        var here = dots.AsSpan(y * width, width);
        var below = dots.AsSpan(Math.Min(y + 1, height - 1) * width, width);
        for (var x = 0; x < width; x++)
            columns[x + 1] = (ushort)(above[x] + here[x] + below[x]);
        (columns[0], columns[width + 1]) = (columns[1], columns[width]);
    }

    private static void HalveRows(ReadOnlySpan<byte> upper, ReadOnlySpan<byte> lower, Span<byte> half)
    {
        var x = 0;
        for (; x <= half.Length - 16 && (2 * x) + 32 <= upper.Length; x += 16)
            Vector128.Narrow(Quarter(upper, lower, 2 * x), Quarter(upper, lower, (2 * x) + 16)).CopyTo(half[x..]);
        for (; x < half.Length; x++)
        {
            var right = Math.Min((2 * x) + 1, upper.Length - 1);
            half[x] = (byte)((upper[2 * x] + upper[right] + lower[2 * x] + lower[right] + 2) >> 2);
        }
    }

    // Eight means of two by two dots each.
    private static Vector128<ushort> Quarter(ReadOnlySpan<byte> upper, ReadOnlySpan<byte> lower, int at) =>
        (Pairs(upper, at) + Pairs(lower, at) + Vector128.Create((ushort)2)) >>> 2;

    private static Vector128<ushort> Pairs(ReadOnlySpan<byte> row, int at)
    {
        var two = Vector128.LoadUnsafe(ref MemoryMarshal.GetReference(row), (nuint)at).AsUInt16();
        return (two & Vector128.Create((ushort)255)) + (two >>> 8);
    }
}
