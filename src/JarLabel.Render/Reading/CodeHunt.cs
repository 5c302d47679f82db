namespace JarLabel.Render.Reading;

/// <summary>Puts finder patterns together to codes and reads them: first each as a flat one, then what is left as bent round a jar.</summary>
/// <param name="views">The photo, and each view half as large as the one before.</param>
/// <param name="stop">Ends it early.</param>
internal sealed class CodeHunt(IReadOnlyList<PhotoView> views, CancellationToken stop)
{
    /// <summary>Modules are looked at where they have so many dots a side at least.</summary>
    private const float FewestDots = 3;

    /// <summary>A code's timing patterns are seen at least so surely: at a first glance, then with the place known well, flat or bent.</summary>
    private const float LeastAtAll = 0.25f, LeastFlat = 0.5f, LeastBent = 0.45f;

    private const int BendsPerSize = 16, TriesPerThree = 12;

    private readonly List<FoundCode> found = [];
    private readonly List<FinderPattern> used = [];

    /// <summary>What looks like a code in this photo and is none is tried so often at most: pictures made to look like nothing but codes come to an end.</summary>
    private int flatTries = 2000, bentTries = 120;

    internal IReadOnlyList<FoundCode> Found => found;

    /// <summary>True when it was stopped.</summary>
    internal bool IsOver => stop.IsCancellationRequested;

    /// <summary>True for a pattern of a code that was read.</summary>
    internal bool Covers(FinderPattern pattern) => used.Exists(known => Vector2.Distance(known.Centre, pattern.Centre) < 2 * known.Module);

    /// <summary>Reads what can be read of these; answers those that are left.</summary>
    internal List<FinderPattern> Read(IReadOnlyList<FinderPattern> patterns)
    {
        var threes = Corners.Among(patterns);
        threes.ForEach(three => Take(three, ReadFlat, ref flatTries));
        threes.ForEach(three => Take(three, ReadBent, ref bentTries));
        return [.. patterns.Where(pattern => !Covers(pattern))];
    }

    private bool IsFree(Corners three) => !three.Patterns.Any(pattern => used.Contains(pattern));

    private void Take(Corners three, Func<Corners, string?> read, ref int tries)
    {
        if (tries <= 0 || IsOver || !IsFree(three))
            return;
        if (read(three) is not { } text)
        {
            tries--;
            return;
        }

        used.AddRange(three.Patterns);
        found.Add(new FoundCode(text, three));
    }

    private string? ReadFlat(Corners three)
    {
        var view = ViewFor(three);
        foreach (var size in three.Sizes.Where(size => new CodePlace(three, size).Timing(view) > LeastAtAll))
        {
            foreach (var place in Alignments(view, three, size).Select(alignment => new CodePlace(three, size, alignment)))
            {
                if (place.Timing(view) > LeastFlat && ModuleReader.Read(view, place) is { } text)
                    return text;
            }
        }

        return null;
    }

    private string? ReadBent(Corners three)
    {
        var view = ViewFor(three);
        var places = three.Sizes.SelectMany(size => Bent(view, three, size)).OrderByDescending(bent => bent.Timing).Take(TriesPerThree);
        return places.Select(bent => ModuleReader.Read(view, bent.Place)).FirstOrDefault(text => text is not null);
    }

    // The timing patterns tell the bend before the alignment pattern is known.
    private static List<(float Timing, CodePlace Place)> Bent(PhotoView view, Corners three, int size)
    {
        var bends = Bend.Likely.Select(bend => (new CodePlace(three, size, null, bend).Timing(view), bend)).Where(b => b.Item1 > LeastBent)
            .OrderByDescending(b => b.Item1).Take(BendsPerSize).ToList();
        return bends.Count == 0 ? []
            : [.. from alignment in Alignments(view, three, size) from b in bends let place = new CodePlace(three, size, alignment, b.bend) select (place.Timing(view), place)];
    }

    private static IEnumerable<Vector2?> Alignments(PhotoView view, Corners three, int size) =>
        [.. AlignmentSearch.In(view, three, size).Select(place => (Vector2?)place), null];

    private PhotoView ViewFor(Corners three)
    {
        var at = 0;
        while (at + 1 < views.Count && three.Module / views[at + 1].Scale >= FewestDots)
            at++;
        return views[at];
    }
}

/// <summary>A code that was read.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Corners">Where it lies in the photo.</param>
internal sealed record FoundCode(string Text, Corners Corners)
{
    /// <summary>Its left upper corner as the picture is shown, not as the code lies.</summary>
    internal Vector2 TopLeft(Func<Vector2, Vector2> shown)
    {
        var (left, right, low) = (shown(Corners.Left.Centre), shown(Corners.Right.Centre), shown(Corners.Low.Centre));
        return Vector2.Min(Vector2.Min(left, right), Vector2.Min(low, right + low - left));
    }
}
