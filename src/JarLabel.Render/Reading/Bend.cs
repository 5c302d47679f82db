namespace JarLabel.Render.Reading;

/// <summary>How the rows of a code round a jar are seen bent: the middle of a row lies so far from where it would lie on a flat label. A parabola is
/// close enough to what a cylinder shows.</summary>
/// <param name="Sideways">How far across the row, modules: a jar seen from above or below.</param>
/// <param name="Along">How far along the row, modules: a jar seen from the left or the right.</param>
/// <param name="Columns">True when the columns are bent instead of the rows: a label whose lines run up the jar.</param>
internal readonly record struct Bend(float Sideways, float Along, bool Columns)
{
    /// <summary>The flat label first, then the bends to try, the slightest first.</summary>
    internal static Bend[] Likely { get; } =
    [
        default,
        .. from sideways in Steps(3, 0.4f) from along in Steps(1.2f, 0.4f) from columns in (bool[])[false, true]
           where sideways != 0 || along != 0
           orderby Math.Abs(sideways) + Math.Abs(along)
           select new Bend(sideways, along, columns),
    ];

    /// <summary>Where a place of the code lies, were it flat: middles of finder patterns stay.</summary>
    /// <param name="across">Modules from the code's left edge.</param>
    /// <param name="down">Modules from its upper edge.</param>
    /// <param name="size">Modules a side.</param>
    internal Vector2 Moved(float across, float down, int size)
    {
        var half = size / 2f;
        var from = ((Columns ? down : across) - half) / (half - Corners.Finder);
        var share = 1 - (from * from);
        return Columns
            ? new Vector2(across + (Sideways * share), down + (Along * share))
            : new Vector2(across + (Along * share), down + (Sideways * share));
    }

    private static IEnumerable<float> Steps(float most, float step) =>
        Enumerable.Range((int)MathF.Round(-most / step), (2 * (int)MathF.Round(most / step)) + 1).Select(i => i * step);
}
