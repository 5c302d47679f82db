namespace JarLabel.Render.Reading;

/// <summary>Three finder patterns that stand to one another as in one code.</summary>
/// <param name="Left">The left upper one.</param>
/// <param name="Right">The right upper one.</param>
/// <param name="Low">The left lower one.</param>
/// <param name="Span">How many modules lie between two of them, as it seems: the sides of a code less seven.</param>
/// <param name="Doubt">How badly they go together; 0 for three that fit perfectly.</param>
internal sealed record Corners(FinderPattern Left, FinderPattern Right, FinderPattern Low, float Span, float Doubt)
{
    /// <summary>From the edge of a code to the middle of a finder pattern, and of the last alignment pattern, modules (ISO/IEC 18004).</summary>
    internal const float Finder = 3.5f, Alignment = 6.5f;

    /// <summary>Of two that fit as well the nearer three are likelier one code: labels stand in rows, too.</summary>
    private const float DoubtPerModule = 0.004f;

    private const int SmallestSize = 21, LargestSize = 177;

    /// <summary>How many neighbours of a pattern are looked at in each direction: in a sheet of codes its own are among the nearest.</summary>
    private const int Neighbours = 5;

    internal float Module => (Left.Module + Right.Module + Low.Module) / 3;

    internal IEnumerable<FinderPattern> Patterns => [Left, Right, Low];

    /// <summary>The sizes, modules a side, that this may be, the likeliest first.</summary>
    internal IEnumerable<int> Sizes
    {
        get
        {
            var (size, most) = (Span + 7, 2.5f + (0.12f * Span));
            return Enumerable.Range(0, 40).Select(version => SmallestSize + (4 * version)).Where(s => Math.Abs(s - size) < most).OrderBy(s => Math.Abs(s - size));
        }
    }

    /// <summary>All threes among the patterns, the likeliest first.</summary>
    internal static List<Corners> Among(IReadOnlyList<FinderPattern> patterns)
    {
        List<Corners> threes = [];
        foreach (var corner in patterns)
        {
            var arms = patterns.Select(other => Arm.Between(corner, other)).OfType<Arm>().ToLookup(arm => arm.Way);
            foreach (var along in Near(arms, 0))
            {
                foreach (var down in Near(arms, 1))
                {
                    if (Of(corner, along, down) is { } three)
                        threes.Add(three);
                }
            }
        }

        threes.Sort((a, b) => a.Doubt.CompareTo(b.Doubt));
        return threes;
    }

    // Ways 0 and 2 lead along the one side, 1 and 3 along the other.
    private static List<Arm> Near(ILookup<int, Arm> arms, int way) =>
        [.. arms[way].OrderBy(arm => arm.Length).Take(Neighbours), .. arms[way + 2].OrderBy(arm => arm.Length).Take(Neighbours)];

    private static Corners? Of(FinderPattern corner, Arm along, Arm down)
    {
        var span = (along.Length + down.Length) / 2;
        var uneven = Math.Abs(along.Length - down.Length) / span;
        if (uneven > 0.4f)
            return null;
        var (a, b) = (along.To.Centre - corner.Centre, down.To.Centre - corner.Centre);
        var (right, low) = FinderPattern.Cross(a, b) > 0 ? (along.To, down.To) : (down.To, along.To);
        return new Corners(corner, right, low, span, uneven + along.Doubt + down.Doubt + (DoubtPerModule * span));
    }

    /// <summary>From one pattern to another that lies in the direction of its sides.</summary>
    private sealed record Arm(FinderPattern To, int Way, float Length, float Doubt)
    {
        private const float Slant = 0.35f;

        internal static Arm? Between(FinderPattern from, FinderPattern to)
        {
            if (ReferenceEquals(from, to) || from.Module > 2 * to.Module || to.Module > 2 * from.Module)
                return null;
            var (there, back) = (from.Modules(to.Centre), to.Modules(from.Centre));
            var (along, across) = Sorted(there);
            var (length, slanted) = Sorted(back);
            if (along < 9 || along > LargestSize || across > (Slant * along) + 1 || slanted > (Slant * length) + 1 || length > 2 * along || along > 2 * length)
                return null;
            var way = Math.Abs(there.X) > Math.Abs(there.Y) ? (there.X > 0 ? 0 : 2) : there.Y > 0 ? 1 : 3;
            var middle = (along + length) / 2;
            return new Arm(to, way, middle, ((across + slanted + Math.Abs(along - length)) / middle) + to.Misfit);
        }

        private static (float Long, float Short) Sorted(Vector2 modules)
        {
            var (x, y) = (Math.Abs(modules.X), Math.Abs(modules.Y));
            return x > y ? (x, y) : (y, x);
        }
    }
}
