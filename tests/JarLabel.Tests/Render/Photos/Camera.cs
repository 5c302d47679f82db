namespace JarLabel.Tests.Render.Photos;

/// <summary>How a photo of a label is taken. What is not set is perfect: straight on, sharp, bright, without grain.</summary>
internal sealed record Camera
{
    /// <summary>How far the camera is from the label, mm: what is nearer is drawn larger.</summary>
    private const double Distance = 250;

    /// <summary>Dots of the photo to a module of the code, where the code's middle is.</summary>
    public double DotsPerModule { get; init; } = 4;

    /// <summary>Turned in the picture, degrees.</summary>
    public double Turn { get; init; }

    /// <summary>Looked at from aside, degrees from straight on; about the axis that <see cref="TiltAxis"/> says.</summary>
    public double Tilt { get; init; }

    /// <summary>The direction of the axis tilted about, degrees from the label's lines of text.</summary>
    public double TiltAxis { get; init; }

    /// <summary>The jar's diameter, mm, with the label's lines running round it; 0 for a flat label.</summary>
    public double Jar { get; init; }

    /// <summary>Gaussian blur, as its standard deviation in modules.</summary>
    public double Blur { get; init; }

    /// <summary>Grain, as the standard deviation of a dot's brightness, of 255.</summary>
    public double Noise { get; init; }

    /// <summary>How bright white paper comes out, of 255.</summary>
    public double White { get; init; } = 235;

    /// <summary>How much of that is left at the right edge of the picture: light from one side.</summary>
    public double Shade { get; init; } = 1;

    /// <summary>For the grain.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>Side of the square picture, as a multiple of the code's side.</summary>
    public double Field { get; init; } = 1.8;

    /// <summary>The photo, as brightness of dots.</summary>
    internal Picture Take(PrintedLabel label)
    {
        var perMillimeter = DotsPerModule / label.Module;
        var side = (int)(label.CodeSide * Field * perMillimeter);
        var seen = new Picture(side, side);
        for (var y = 0; y < side; y++)
        {
            for (var x = 0; x < side; x++)
                seen[x, y] = Dot(label, (x - (side / 2.0)) / perMillimeter, (y - (side / 2.0)) / perMillimeter, 1 / perMillimeter) * Light(x / (double)side);
        }

        return seen.Blurred(Blur * DotsPerModule).Grained(Noise, Seed);
    }

    private double Light(double across) => White / 255 * (1 + ((Shade - 1) * across));

    // A dot gathers the light of its whole square.
    private double Dot(PrintedLabel label, double x, double y, double size)
    {
        const int parts = 3;
        var sum = 0.0;
        for (var i = 0; i < parts * parts; i++)
            sum += Seen(label, x + (((i % parts) + 0.5) / parts * size), y + (((i / parts) + 0.5) / parts * size));
        return sum / (parts * parts);
    }

    private double Seen(PrintedLabel label, double x, double y)
    {
        var from = Bent(0, 0, -Distance);
        var along = Bent(x, y, Distance);
        return (Jar > 0 ? OnJar(from, along) : OnPlane(from, along)) is { } place ? label.At(place.X, place.Y) : PrintedLabel.Behind;
    }

    /// <summary>From the camera's directions to the label's.</summary>
    private (double X, double Y, double Z) Bent(double x, double y, double z)
    {
        (x, y) = Turned(x, y, -Turn);
        (x, y) = Turned(x, y, -TiltAxis);
        (y, z) = Turned(y, z, -Tilt);
        (x, y) = Turned(x, y, TiltAxis);
        return (x, y, z);
    }

    private static (double, double) Turned(double a, double b, double degrees)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        return ((a * cos) - (b * sin), (a * sin) + (b * cos));
    }

    private static (double X, double Y)? OnPlane((double X, double Y, double Z) from, (double X, double Y, double Z) along)
    {
        var t = -from.Z / along.Z;
        return t > 0 ? (from.X + (t * along.X), from.Y + (t * along.Y)) : null;
    }

    // The jar's axis lies one radius behind the middle of the code, across the lines of text.
    private (double X, double Y)? OnJar((double X, double Y, double Z) from, (double X, double Y, double Z) along)
    {
        var radius = Jar / 2;
        var a = (along.X * along.X) + (along.Z * along.Z);
        var b = (from.X * along.X) + ((from.Z - radius) * along.Z);
        var c = (from.X * from.X) + ((from.Z - radius) * (from.Z - radius)) - (radius * radius);
        var under = (b * b) - (a * c);
        if (under < 0)
            return null;
        var t = (-b - Math.Sqrt(under)) / a;
        var (x, z) = (from.X + (t * along.X), from.Z + (t * along.Z));
        return (radius * Math.Atan2(x, radius - z), from.Y + (t * along.Y));
    }
}
