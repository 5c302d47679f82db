using System.Globalization;

namespace JarLabel.Printing.Printers;

/// <summary>A self-describing name of paper: <c>iso_a4_210x297mm</c> (PWG 5101.1).</summary>
public static class MediaName
{
    /// <summary>The size in hundredths of a millimetre, or null when the name says none.</summary>
    public static (int Width, int Height)? SizeOf(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var size = name[(name.LastIndexOf('_') + 1)..];
        var unit = size.EndsWith("mm", StringComparison.Ordinal) ? 100.0 : size.EndsWith("in", StringComparison.Ordinal) ? 2540.0 : 0;
        return unit > 0 && size[..^2].Split('x') is [var width, var height] && Read(width, unit) is { } wide && Read(height, unit) is { } high ? (wide, high) : null;
    }

    private static int? Read(string text, double unit) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) && value is > 0 and < 5000 ? (int)Math.Round(value * unit) : null;
}
