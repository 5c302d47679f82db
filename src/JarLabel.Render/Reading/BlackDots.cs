namespace JarLabel.Render.Reading;

/// <summary>Which dots of a picture are black: those darker than what lies around them, within some twenty dots. One bit a dot.</summary>
internal sealed class BlackDots
{
    private const int Block = 8;
    private const int Around = 2;

    private readonly int perRow;
    private readonly int across;
    private readonly ulong[] words;
    private readonly byte[] means;

    internal BlackDots(GreyPicture picture)
    {
        (Width, Height) = (picture.Width, picture.Height);
        perRow = (Width + 63) / 64;
        across = (Width + Block - 1) / Block;
        words = new ulong[perRow * Height];
        means = Spread(BlockMeans(picture), across, (Height + Block - 1) / Block);
        var limits = new byte[perRow * 64];
        for (var y = 0; y < Height; y++)
        {
            if (y % Block == 0)
                Limits(y / Block, limits);
            Compare(picture.Dots.AsSpan(y * Width, Width), limits, words.AsSpan(y * perRow, perRow));
        }
    }

    internal int Width { get; }

    internal int Height { get; }

    internal bool this[int x, int y] => (words[(y * perRow) + (x >> 6)] >> (x & 63) & 1) != 0;

    /// <summary>A row, its first dot in the lowest bit of the first word; beyond the last dot all is white.</summary>
    internal ReadOnlySpan<ulong> Row(int y) => words.AsSpan(y * perRow, perRow);

    /// <summary>The mean brightness around a dot.</summary>
    internal float Mean(int x, int y) => means[(y / Block * across) + (x / Block)];

    // A little below the mean, so that a plain surface is white.
    private void Limits(int blockRow, byte[] limits)
    {
        for (var x = 0; x < Width; x++)
        {
            var mean = means[(blockRow * across) + (x / Block)];
            limits[x] = (byte)Math.Max(0, mean - (mean / 16) - 1);
        }
    }

    private static void Compare(ReadOnlySpan<byte> row, ReadOnlySpan<byte> limits, Span<ulong> bits)
    {
        var x = 0;
        for (; x <= row.Length - 16; x += 16)
        {
            var black = Vector128.LessThan(At(row, x), At(limits, x)).ExtractMostSignificantBits();
            bits[x >> 6] |= (ulong)black << (x & 63);
        }

        for (; x < row.Length; x++)
        {
            if (row[x] < limits[x])
                bits[x >> 6] |= 1UL << (x & 63);
        }
    }

    private byte[] BlockMeans(GreyPicture picture)
    {
        var blocks = new byte[across * ((Height + Block - 1) / Block)];
        var columns = new ushort[across * Block];
        for (var y = 0; y < Height; y += Block)
        {
            var rows = Math.Min(Block, Height - y);
            columns.AsSpan().Clear();
            for (var row = y; row < y + rows; row++)
                Add(picture.Dots.AsSpan(row * Width, Width), columns);
            for (var block = 0; block < across; block++)
                blocks[(y / Block * across) + block] = (byte)(Sum(columns, block * Block) / (rows * Math.Min(Block, Width - (block * Block))));
        }

        return blocks;
    }

    private static void Add(ReadOnlySpan<byte> row, Span<ushort> columns)
    {
        var x = 0;
        for (; x <= row.Length - 16; x += 16)
        {
            var (low, high) = Vector128.Widen(At(row, x));
            (Vector128.Create<ushort>(columns[x..]) + low).CopyTo(columns[x..]);
            (Vector128.Create<ushort>(columns[(x + 8)..]) + high).CopyTo(columns[(x + 8)..]);
        }

        for (; x < row.Length; x++)
            columns[x] += row[x];
    }

    private static int Sum(ReadOnlySpan<ushort> columns, int from)
    {
        var sum = 0;
        foreach (var column in columns.Slice(from, Block))
            sum += column;
        return sum;
    }

    private static byte[] Spread(byte[] blocks, int across, int down) =>
        Spread(Spread(blocks, across, 1, down, across), down, across, across, 1);

    // The mean of five blocks along lines of so many blocks, each block so far from the one before, each line from the one before.
    private static byte[] Spread(byte[] blocks, int length, int step, int lines, int next)
    {
        var spread = new byte[blocks.Length];
        for (var line = 0; line < lines; line++)
        {
            for (var i = 0; i < length; i++)
            {
                var (from, to) = (Math.Max(i - Around, 0), Math.Min(i + Around, length - 1));
                var sum = 0;
                for (var at = from; at <= to; at++)
                    sum += blocks[(line * next) + (at * step)];
                spread[(line * next) + (i * step)] = (byte)((sum + ((to - from + 1) / 2)) / (to - from + 1));
            }
        }

        return spread;
    }

    private static Vector128<byte> At(ReadOnlySpan<byte> row, int x) => Vector128.LoadUnsafe(ref MemoryMarshal.GetReference(row), (nuint)x);
}
