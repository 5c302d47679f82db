namespace JarLabel.Render.Reading;

/// <summary>Where a code of that size lies in a photo, and how it is bent.</summary>
internal sealed class CodePlace
{
    private readonly Perspective flat;
    private readonly Bend bend;

    internal CodePlace(Corners corners, int size, Vector2? alignment = null, Bend bend = default)
    {
        (Size, this.bend) = (size, bend);
        var far = size - Corners.Finder;
        var inner = size - Corners.Alignment;
        var (last, seen) = alignment is { } place
            ? (bend.Moved(inner, inner, size), place)
            : (new Vector2(far), corners.Right.Centre + corners.Low.Centre - corners.Left.Centre);
        flat = Perspective.Of(
            [new Vector2(Corners.Finder), new Vector2(far, Corners.Finder), last, new Vector2(Corners.Finder, far)],
            [corners.Left.Centre, corners.Right.Centre, seen, corners.Low.Centre]);
    }

    /// <summary>Modules a side.</summary>
    internal int Size { get; }

    /// <summary>Where in the photo so many modules from the left and the upper edge lie.</summary>
    internal Vector2 At(float across, float down)
    {
        var moved = bend == default ? new Vector2(across, down) : bend.Moved(across, down, Size);
        return flat.At(moved.X, moved.Y);
    }

    /// <summary>How surely the modules that turn from black to white by turns between the finder patterns (ISO/IEC 18004: timing patterns) are seen in their
    /// places: 1 when each is darker or lighter than both its neighbours, about 0 when there is no code.</summary>
    internal float Timing(PhotoView view)
    {
        var (right, all) = (0f, 0f);
        Along(view, false, ref right, ref all);
        Along(view, true, ref right, ref all);
        return all > 0 ? right / all : 0;
    }

    private void Along(PhotoView view, bool down, ref float right, ref float all)
    {
        const float line = 6.5f;
        float Light(int i) => view.At(down ? At(line, i + 0.5f) : At(i + 0.5f, line));
        var (before, here) = (Light(6), Light(7));
        for (var i = 7; i <= Size - 8; i++)
        {
            var next = Light(i + 1);
            var lighter = here - ((before + next) / 2);
            right += i % 2 == 0 ? -lighter : lighter;
            all += Math.Abs(lighter);
            (before, here) = (here, next);
        }
    }
}
