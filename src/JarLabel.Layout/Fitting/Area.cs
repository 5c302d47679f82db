namespace JarLabel.Layout.Fitting;

/// <summary>Room on the page, mm.</summary>
internal readonly record struct Area(double X, double Y, double Width, double Height)
{
    internal double Right => X + Width;

    internal double Bottom => Y + Height;

    /// <summary>A smaller piece of this room, standing as told.</summary>
    internal Area Piece(double width, double height, Align across, Align down) =>
        new(X + Before(Width - width, across), Y + Before(Height - height, down), width, height);

    internal Area Shrunk(double by) => new(X + by, Y + by, Width - (2 * by), Height - (2 * by));

    private static double Before(double spare, Align align) => align switch
    {
        Align.Start => 0,
        Align.Middle => spare / 2,
        _ => spare,
    };
}
