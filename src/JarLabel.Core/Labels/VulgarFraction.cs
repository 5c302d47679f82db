namespace JarLabel.Core.Labels;

/// <summary>Writes a number as a bench says it: a whole number with a fraction as one glyph where that is what it is, decimals otherwise.</summary>
public static class VulgarFraction
{
    private static readonly (double Value, string Glyph)[] Glyphs =
    [
        (0, ""), (1 / 8.0, "⅛"), (1 / 4.0, "¼"), (1 / 3.0, "⅓"), (3 / 8.0, "⅜"), (1 / 2.0, "½"), (5 / 8.0, "⅝"), (2 / 3.0, "⅔"),
        (3 / 4.0, "¾"), (7 / 8.0, "⅞"), (1, ""),
    ];

    /// <summary>The whole and its fraction glyph, when the value lies within a relative tolerance of one; null otherwise.</summary>
    public static string? Exact(double value, double tolerance)
    {
        var whole = Math.Floor(value);
        foreach (var (part, glyph) in Glyphs)
        {
            if (Math.Abs(whole + part - value) <= tolerance * value)
            {
                return Joined(part == 1 ? whole + 1 : whole, glyph);
            }
        }

        return null;
    }

    /// <summary>As <see cref="Exact"/> within half a percent; else up to two decimals.</summary>
    public static string Of(double value) => Exact(value, 0.005) ?? value.ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>As <see cref="Of"/>, with no more figures than are read across a bench: tenths from 1 on, hundredths below.</summary>
    public static string Brief(double value) => Exact(value, 0.005) ?? value.ToString(value < 1 ? "0.##" : "0.#", CultureInfo.InvariantCulture);

    private static string? Joined(double whole, string glyph) => whole switch
    {
        0 when glyph.Length == 0 => null,
        0 => glyph,
        _ => whole.ToString("0", CultureInfo.InvariantCulture) + glyph,
    };
}
