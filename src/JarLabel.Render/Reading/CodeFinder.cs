namespace JarLabel.Render.Reading;

/// <summary>Finds the codes in one photo. Their finder patterns are looked for at every scale, each with few dots; what was found is then looked at closely, where it lies,
/// in as many dots as it needs. Where a pattern is left over, or nothing was found, the photo is looked at in further ways.</summary>
internal static class CodeFinder
{
    private const int MostPatterns = 4000;

    /// <summary>Around so many left patterns the photo is looked at again, so many modules to each side; those that fit worse are none.</summary>
    private const int MostLeft = 24, ModulesAround = 44;
    private const float LeftMisfit = 0.16f;

    /// <summary>In how many dots a module is seen there, at least.</summary>
    private const float DotsThere = 2.5f;

    /// <summary>A photo of so few dots is looked at again as a whole.</summary>
    private const int FewDots = 2_500_000;

    private static readonly int[] Reaches = [3, 6];

    /// <summary>Every code that can be read; fewer where it is stopped.</summary>
    internal static IReadOnlyList<FoundCode> In(GreyPicture photo, CancellationToken stop)
    {
        var views = new PhotoView(photo, 1).Pyramid();
        var hunt = new CodeHunt(views, stop);
        var left = hunt.Read(Merged(Patterns(views)));
        if (hunt.Found.Count == 0)
            left = Again(hunt, Further(views), left, () => hunt.Found.Count > 0);
        foreach (var pattern in left.Where(pattern => pattern.Misfit < LeftMisfit).Take(MostLeft).ToList())
        {
            if (!hunt.IsOver && !hunt.Covers(pattern))
                Again(hunt, Further(Around(pattern, views)), Near(pattern, left), () => hunt.Covers(pattern));
        }

        return hunt.Found;
    }

    private static IEnumerable<FinderPattern> Patterns(List<PhotoView> views) =>
        views.SelectMany((view, i) => FinderScan.In(view, i == views.Count - 1, MostPatterns));

    private static List<FinderPattern> Again(CodeHunt hunt, IEnumerable<List<PhotoView>> looks, List<FinderPattern> left, Func<bool> done)
    {
        foreach (var look in looks.TakeWhile(_ => !hunt.IsOver))
        {
            var more = Patterns(look).Where(pattern => !hunt.Covers(pattern)).ToList();
            if (more.Count > 0)
                left = hunt.Read(Merged([.. left, .. more]));
            if (done())
                break;
        }

        return left;
    }

    // Without grain, larger, with edges brought out.
    private static IEnumerable<List<PhotoView>> Further(List<PhotoView> views)
    {
        var whole = views[0];
        yield return (whole with { Grey = whole.Grey.Smoothed() }).Pyramid();
        if (views.Find(view => view.Grey.Dots.Length <= FewDots) is not { } few)
            yield break;
        if (few == whole)
            yield return [new PhotoView(whole.Grey.Doubled(), whole.Scale / 2, whole.Corner)];
        foreach (var reach in Reaches)
            yield return (few with { Grey = new GreyPicture(few.Grey.Width, few.Grey.Height, EdgesOf.Brought(few.Grey.Dots, few.Grey.Width, reach)) }).Pyramid();
    }

    private static List<PhotoView> Around(FinderPattern pattern, List<PhotoView> views)
    {
        var view = views.FindLast(view => pattern.Module / view.Scale >= DotsThere) ?? views[0];
        var (middle, reach) = (pattern.Centre / view.Scale, ModulesAround * pattern.Module / view.Scale);
        var (left, top) = ((int)Math.Max(0, middle.X - reach), (int)Math.Max(0, middle.Y - reach));
        var part = view.Grey.Part(left, top, (int)(middle.X + reach) - left, (int)(middle.Y + reach) - top);
        return [new PhotoView(part, view.Scale, new Vector2(left, top) * view.Scale)];
    }

    private static List<FinderPattern> Near(FinderPattern pattern, List<FinderPattern> left) =>
        left.FindAll(other => Vector2.Distance(other.Centre, pattern.Centre) < 2 * ModulesAround * pattern.Module);

    // The same pattern is seen at more than one scale: the clearest sight of it counts.
    private static List<FinderPattern> Merged(IEnumerable<FinderPattern> patterns)
    {
        List<FinderPattern> merged = [];
        foreach (var pattern in patterns.OrderBy(pattern => pattern.Misfit).Take(MostPatterns))
        {
            if (merged.TrueForAll(other => Vector2.Distance(other.Centre, pattern.Centre) > 2 * Math.Max(other.Module, pattern.Module)))
                merged.Add(pattern);
        }

        return merged;
    }
}

/// <summary>One of the three squares in the corners of a code, as it is seen in a photo.</summary>
/// <param name="Centre">Its middle, in the photo.</param>
/// <param name="Along">From one module to the next along one of its sides.</param>
/// <param name="Down">From one module to the next along the other.</param>
/// <param name="Misfit">How far its edges lie from those of a square so seen, modules.</param>
internal sealed record FinderPattern(Vector2 Centre, Vector2 Along, Vector2 Down, float Misfit)
{
    /// <summary>The side of a module, dots of the photo.</summary>
    internal float Module { get; } = MathF.Sqrt(MathF.Abs(Cross(Along, Down)));

    /// <summary>A place of the photo, counted in modules from the middle along both sides.</summary>
    internal Vector2 Modules(Vector2 place)
    {
        var (from, whole) = (place - Centre, Cross(Along, Down));
        return new Vector2(Cross(from, Down) / whole, Cross(Along, from) / whole);
    }

    internal static float Cross(Vector2 a, Vector2 b) => (a.X * b.Y) - (a.Y * b.X);
}
