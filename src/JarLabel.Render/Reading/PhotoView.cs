namespace JarLabel.Render.Reading;

/// <summary>A photo, or a part of it, looked at larger or smaller.</summary>
/// <param name="Grey">What is seen.</param>
/// <param name="Scale">Dots of the photo to a dot seen.</param>
/// <param name="Corner">Where in the photo its left top corner lies.</param>
internal sealed record PhotoView(GreyPicture Grey, float Scale, Vector2 Corner = default)
{
    /// <summary>A code has 21 modules a side at least.</summary>
    private const int SmallestSide = 21;

    /// <summary>How bright the photo is at a place of the photo.</summary>
    internal float At(Vector2 place)
    {
        var here = (place - Corner) / Scale;
        return Grey.At(here.X, here.Y);
    }

    internal Vector2 InPhoto(Vector2 here) => Corner + (here * Scale);

    /// <summary>The same, seen at half the size.</summary>
    internal PhotoView Halved() => new(Grey.Halved(), Scale * 2, Corner);

    /// <summary>This view, and each half as large as the one before, down to the smallest that a code can be seen in.</summary>
    internal List<PhotoView> Pyramid()
    {
        List<PhotoView> views = [this];
        while (Math.Min(views[^1].Grey.Width, views[^1].Grey.Height) >= 4 * SmallestSide)
            views.Add(views[^1].Halved());
        return views;
    }
}
