namespace JarLabel.Render.Reading;

/// <summary>Cameras store a picture as it falls on their sensor, and how to turn it.</summary>
internal static class ExifOrientation
{
    /// <summary>Where a place of the stored picture lies in the one that is shown.</summary>
    internal static Vector2 Of(Vector2 place, SKEncodedOrigin origin, SKSizeI size)
    {
        var (x, y, right, low) = (place.X, place.Y, size.Width - place.X, size.Height - place.Y);
        return origin switch
        {
            SKEncodedOrigin.TopRight => new(right, y),
            SKEncodedOrigin.BottomRight => new(right, low),
            SKEncodedOrigin.BottomLeft => new(x, low),
            SKEncodedOrigin.LeftTop => new(y, x),
            SKEncodedOrigin.RightTop => new(low, x),
            SKEncodedOrigin.RightBottom => new(low, right),
            SKEncodedOrigin.LeftBottom => new(y, right),
            _ => place,
        };
    }
}
