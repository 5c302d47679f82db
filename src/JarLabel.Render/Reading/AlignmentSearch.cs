namespace JarLabel.Render.Reading;

/// <summary>Looks for the last alignment pattern of a code near where it should be: a black module in a white ring in a black ring (ISO/IEC 18004).</summary>
internal static class AlignmentSearch
{
    private const float Step = 0.5f, FineStep = 0.2f;
    private const int Reach = 9;
    private const int Side = 5;
    private const int Most = 3;
    private const float Surely = 0.45f;

    /// <summary>Where it may be, the best first; none for the smallest code, which has none.</summary>
    internal static List<Vector2> In(PhotoView view, Corners corners, int size)
    {
        if (size < 25)
            return [];
        var (along, down) = ((corners.Right.Centre - corners.Left.Centre) / (size - 7), (corners.Low.Centre - corners.Left.Centre) / (size - 7));
        var middle = corners.Left.Centre + ((along + down) * (size - Corners.Alignment - Corners.Finder));
        List<(float Score, Vector2 Place)> seen = [];
        for (var i = -Reach; i <= Reach; i++)
        {
            for (var j = -Reach; j <= Reach; j++)
            {
                var place = middle + (along * (Step * i)) + (down * (Step * j));
                if (Likeness(view, place, along, down) is var score && score > Surely)
                    seen.Add((score - (0.01f * Step * (Math.Abs(i) + Math.Abs(j))), place));
            }
        }

        return [.. Peaks(seen, along.Length() + down.Length()).Select(place => Refined(view, place, along, down))];
    }

    private static List<Vector2> Peaks(List<(float Score, Vector2 Place)> seen, float apart)
    {
        List<Vector2> peaks = [];
        foreach (var (_, place) in seen.OrderByDescending(s => s.Score))
        {
            if (peaks.Count < Most && peaks.TrueForAll(peak => Vector2.Distance(peak, place) > apart / 2))
                peaks.Add(place);
        }

        return peaks;
    }

    private static Vector2 Refined(PhotoView view, Vector2 place, Vector2 along, Vector2 down)
    {
        var (best, most) = (place, float.MinValue);
        for (var i = -2; i <= 2; i++)
        {
            for (var j = -2; j <= 2; j++)
            {
                var there = place + (along * (FineStep * i)) + (down * (FineStep * j));
                if (Likeness(view, there, along, down) is var score && score > most)
                    (best, most) = (there, score);
            }
        }

        return best;
    }

    // The correlation of brightness with the pattern: 1 for the very same.
    private static float Likeness(PhotoView view, Vector2 middle, Vector2 along, Vector2 down)
    {
        float sum = 0, squares = 0, white = 0;
        for (var i = -Side / 2; i <= Side / 2; i++)
        {
            for (var j = -Side / 2; j <= Side / 2; j++)
            {
                var light = view.At(middle + (along * i) + (down * j));
                (sum, squares) = (sum + light, squares + (light * light));
                if (Math.Max(Math.Abs(i), Math.Abs(j)) == 1)
                    white += light;
            }
        }

        const int all = Side * Side, whites = 8;
        var spread = squares - (sum * sum / all);
        return spread < 1 ? 0 : (white - (sum * whites / all)) / MathF.Sqrt(spread * whites * (all - whites) / all);
    }
}
