namespace JarLabel.Render.Reading;

/// <summary>Looks for finder patterns row by row: black, white, black, white, black as 1 : 1 : 3 : 1 : 1 (ISO/IEC 18004), then the same down the column, then all round.</summary>
internal sealed class FinderScan
{
    private const int RowStep = 2;

    /// <summary>Seven modules of less than two dots are no more seen; of more than eight a smaller view shows them.</summary>
    private const int Smallest = 12, Largest = 56;

    private readonly PhotoView view;
    private readonly BlackDots dots;
    private readonly int largest;
    private readonly int[] edges;
    private readonly List<FinderPattern> found = [];
    private int near;

    private FinderScan(PhotoView view, int largest)
    {
        (this.view, this.largest) = (view, largest);
        dots = new BlackDots(view.Grey);
        edges = new int[dots.Width + 2];
    }

    /// <summary>The finder patterns of small modules; of large ones too in the last, smallest view.</summary>
    internal static List<FinderPattern> In(PhotoView view, bool last, int most)
    {
        var scan = new FinderScan(view, last ? 4 * Largest : Largest);
        for (var y = 1; y < scan.dots.Height && scan.found.Count < most; y += RowStep)
            scan.Look(y, scan.Edges(scan.dots.Row(y)));
        return scan.found;
    }

    // Where white turns to black and black to white, by turns.
    private int Edges(ReadOnlySpan<ulong> row)
    {
        var (count, last) = (0, 0UL);
        for (var word = 0; word < row.Length; word++)
        {
            var change = row[word] ^ (row[word] << 1 | last);
            last = row[word] >> 63;
            for (; change != 0; change &= change - 1)
                edges[count++] = (word * 64) + BitOperations.TrailingZeroCount(change);
        }

        if (last != 0)
            edges[count++] = dots.Width;
        return count;
    }

    private void Look(int y, int count)
    {
        for (var i = 0; i + 5 < count; i += 2)
        {
            if (IsFinder(edges[i + 1] - edges[i], edges[i + 2] - edges[i + 1], edges[i + 3] - edges[i + 2], edges[i + 4] - edges[i + 3], edges[i + 5] - edges[i + 4]))
                Look((edges[i + 2] + edges[i + 3]) / 2f, y);
        }
    }

    private void Look(float x, int y)
    {
        if (IsKnown(x, y) || Crossed((int)x, y, 0, 1) is not { } column)
            return;
        var middle = y + 0.5f + column.Shift;
        if (Crossed((int)x, (int)middle, 1, 0) is not { } row)
            return;
        var centre = new Vector2((int)x + 0.5f + row.Shift, middle);
        if (FinderFit.At(view, dots, centre, Math.Max(row.Whole, column.Whole) / 7f) is { } pattern)
            found.Add(pattern);
    }

    // Rows come from above: what ended well above this row is no longer looked at.
    private bool IsKnown(float x, int y)
    {
        var place = view.InPhoto(new Vector2(x, y + 0.5f));
        while (near < found.Count && found[near].Centre.Y + (5 * found[near].Module) < place.Y)
            near++;
        for (var i = near; i < found.Count; i++)
        {
            if (Vector2.Distance(found[i].Centre, place) < 2 * found[i].Module)
                return true;
        }

        return false;
    }

    /// <summary>The five runs along one line through a black dot: how long they are, and how far from that dot the middle one has its middle.</summary>
    private (int Whole, float Shift)? Crossed(int x, int y, int dx, int dy)
    {
        if (Runs(x, y, dx, dy) is not { } after || Runs(x, y, -dx, -dy) is not { } before)
            return null;
        var middle = after.Centre + before.Centre - 1;
        return IsFinder(before.Black, before.White, middle, after.White, after.Black)
            ? (before.Black + before.White + middle + after.White + after.Black, (after.Centre - before.Centre) / 2f)
            : null;
    }

    private (int Centre, int White, int Black)? Runs(int x, int y, int dx, int dy)
    {
        var centre = Run(ref x, ref y, dx, dy, true);
        var white = centre > 0 ? Run(ref x, ref y, dx, dy, false) : 0;
        var black = white > 0 ? Run(ref x, ref y, dx, dy, true) : 0;
        return black > 0 ? (centre, white, black) : null;
    }

    private int Run(ref int x, ref int y, int dx, int dy, bool black)
    {
        var length = 0;
        while (length <= largest && (uint)x < (uint)dots.Width && (uint)y < (uint)dots.Height && dots[x, y] == black)
        {
            length++;
            (x, y) = (x + dx, y + dy);
        }

        return length <= largest ? length : 0;
    }

    private bool IsFinder(int first, int second, int middle, int fourth, int fifth)
    {
        var whole = first + second + middle + fourth + fifth;
        if (whole < Smallest || whole > largest)
            return false;
        var module = whole / 7f;
        var slack = (0.55f * module) + 0.5f;
        return Math.Abs(first - module) < slack && Math.Abs(second - module) < slack && Math.Abs(middle - (3 * module)) < 1.5f * slack
            && Math.Abs(fourth - module) < slack && Math.Abs(fifth - module) < slack;
    }
}
