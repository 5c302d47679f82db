using JarLabel.Layout.Marks;

namespace JarLabel.Render.Drawing;

/// <summary>The dark modules of a code as closed outlines of whole module coordinates, to be filled by the even-odd rule.
/// <para>A corner stands wherever an odd number of the four modules around a lattice point is dark; where two diagonal ones touch, the
/// outlines simply cross. Each lattice row and column holds an even number of corners, and neighbours in pairs are joined. That is the
/// fewest points an outline can have, and neighbouring modules share no edge, so that no viewer can show a seam.</para></summary>
internal static class QrOutline
{
    /// <summary>Calls <paramref name="moveTo"/> for the first corner of each outline and <paramref name="lineTo"/> for the others; legs
    /// alternate between level and upright, and each outline closes with an upright leg.</summary>
    internal static void Trace(QrModules modules, Action<int, int> moveTo, Action<int, int> lineTo)
    {
        var corners = Corners(modules);
        var level = Partners(corners, corner => corner.Y, corner => corner.X);
        var upright = Partners(corners, corner => corner.X, corner => corner.Y);
        var done = new bool[corners.Count];
        for (var first = 0; first < corners.Count; first++)
        {
            if (done[first])
                continue;
            moveTo(corners[first].X, corners[first].Y);
            var at = first;
            do
            {
                var across = level[at];
                done[at] = done[across] = true;
                lineTo(corners[across].X, corners[across].Y);
                at = upright[across];
                if (at != first)
                    lineTo(corners[at].X, corners[at].Y);
            }
            while (at != first);
        }
    }

    private static List<(int X, int Y)> Corners(QrModules modules)
    {
        var corners = new List<(int X, int Y)>();
        for (var y = 0; y <= modules.Size; y++)
        {
            for (var x = 0; x <= modules.Size; x++)
            {
                if (Dark(modules, y - 1, x - 1) ^ Dark(modules, y - 1, x) ^ Dark(modules, y, x - 1) ^ Dark(modules, y, x))
                    corners.Add((x, y));
            }
        }

        return corners;
    }

    private static bool Dark(QrModules modules, int row, int column) =>
        row >= 0 && column >= 0 && row < modules.Size && column < modules.Size && modules[row, column];

    private static int[] Partners(List<(int X, int Y)> corners, Func<(int X, int Y), int> line, Func<(int X, int Y), int> along)
    {
        var partners = new int[corners.Count];
        var order = Enumerable.Range(0, corners.Count).OrderBy(i => line(corners[i])).ThenBy(i => along(corners[i])).ToArray();
        for (var i = 0; i < order.Length; i += 2)
            (partners[order[i]], partners[order[i + 1]]) = (order[i + 1], order[i]);
        return partners;
    }
}
