namespace JarLabel.Render.Drawing;

/// <summary>The dark modules of a code as closed outlines of whole module coordinates, to be filled by the even-odd rule.
/// <para>A corner stands wherever an odd number of the four modules around a lattice point is dark; where two diagonal ones touch, the
/// outlines simply cross. Each lattice row and each lattice column holds an even number of corners, and neighbours are joined in pairs.
/// No outline can have fewer points, and neighbouring modules share no edge, so that no viewer can show a seam.</para></summary>
internal sealed class QrOutline
{
    private readonly List<(int X, int Y)> corners = new(512);

    // The corner that each one is joined to upwards or downwards. To the left or right it is the other one of its pair: index ^ 1.
    private readonly List<int> upright = new(512);

    private QrOutline(QrModules modules)
    {
        var waiting = new int[modules.Size + 1];
        Array.Fill(waiting, -1);
        for (var y = 0; y <= modules.Size; y++)
            CollectRow(modules, y, waiting);
    }

    /// <summary>The outlines one after the other, each as its corners in order.</summary>
    internal static IEnumerable<(int X, int Y)[]> Trace(QrModules modules)
    {
        var outline = new QrOutline(modules);
        var done = new bool[outline.corners.Count];
        for (var first = 0; first < done.Length; first++)
        {
            if (!done[first])
                yield return outline.Follow(first, done);
        }
    }

    private (int X, int Y)[] Follow(int first, bool[] done)
    {
        var ring = new List<(int X, int Y)>();
        var at = first;
        do
        {
            ring.Add(corners[at]);
            ring.Add(corners[at ^ 1]);
            done[at] = done[at ^ 1] = true;
            at = upright[at ^ 1];
        }
        while (at != first);
        return [.. ring];
    }

    private void CollectRow(QrModules modules, int y, int[] waiting)
    {
        var edge = false;
        for (var x = 0; x <= modules.Size; x++)
        {
            var below = x < modules.Size && IsEdge(modules, y, x);
            if (below != edge)
                AddCorner(x, y, waiting);
            edge = below;
        }
    }

    // Whether dark and light meet between row y - 1 and row y. A corner stands where such an edge begins or ends.
    private static bool IsEdge(QrModules modules, int y, int x) =>
        (y > 0 && modules[y - 1, x]) != (y < modules.Size && modules[y, x]);

    private void AddCorner(int x, int y, int[] waiting)
    {
        var index = corners.Count;
        corners.Add((x, y));
        upright.Add(waiting[x]);
        if (waiting[x] >= 0)
            upright[waiting[x]] = index;
        waiting[x] = waiting[x] < 0 ? index : -1;
    }
}
