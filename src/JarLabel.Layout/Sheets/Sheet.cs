namespace JarLabel.Layout.Sheets;

/// <summary>Label stock: a sheet of labels, or a roll (one label a page). All lengths in mm. Named by its dimensions.</summary>
/// <param name="Id">Its name, the same as its file's.</param>
/// <param name="Title">What it is, for a person.</param>
/// <param name="PaperWidth">Width of the page.</param>
/// <param name="PaperHeight">Height of the page.</param>
/// <param name="Shape">The labels' outline.</param>
/// <param name="Width">Width of one label; a round label's diameter.</param>
/// <param name="Height">Height of one label.</param>
/// <param name="Corner">Radius of the rounded corners; 0 for square ones.</param>
/// <param name="Left">Page edge to the first label.</param>
/// <param name="Top">Page top to the first label.</param>
/// <param name="PitchX">From one label's left edge to the next one's.</param>
/// <param name="PitchY">From one label's top edge to the next one's.</param>
/// <param name="Columns">Labels side by side.</param>
/// <param name="Rows">Labels below each other.</param>
/// <param name="Dpi">Dots per inch of the printers this stock is made for.</param>
/// <param name="Design">The design that is used when none is asked for.</param>
/// <param name="Source">Where the dimensions come from.</param>
public sealed record Sheet(
    string Id,
    string Title,
    double PaperWidth,
    double PaperHeight,
    LabelShape Shape,
    double Width,
    double Height,
    double Corner,
    double Left,
    double Top,
    double PitchX,
    double PitchY,
    int Columns,
    int Rows,
    int Dpi,
    string Design,
    string Source)
{
    /// <summary>True for stock whose printers have black and nothing else, no greys either: thermal rolls.</summary>
    public bool BlackOnly { get; init; }

    /// <summary>How many labels a page holds.</summary>
    public int Places => Columns * Rows;

    /// <summary>The place of one label. Places are counted from 1, along each row from the top left.</summary>
    public LabelArea AreaAt(int place)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(place, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(place, Places);
        var (row, column) = Math.DivRem(place - 1, Columns);
        return new LabelArea(Shape, Left + (column * PitchX), Top + (row * PitchY), Width, Height, Dpi) { BlackOnly = BlackOnly };
    }

    /// <summary>A page of this stock with what was placed on it.</summary>
    public Page PageOf(IReadOnlyList<Mark> marks) => new(PaperWidth, PaperHeight, marks) { OneBitDpi = BlackOnly ? Dpi : null };

    /// <summary>The same stock as it must be told to a printer that shifts and scales, so that each label's middle is printed in its true place.
    /// Labels keep their size: what is inside them is laid out in whole dots, and 2 % of a label's half is less than its white edge.</summary>
    /// <param name="dx">How far right of its place the first label is printed, mm.</param>
    /// <param name="dy">How far below its place, mm.</param>
    /// <param name="sx">Printed over true length, across.</param>
    /// <param name="sy">Printed over true length, down.</param>
    public Sheet For(double dx, double dy, double sx, double sy)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(sx);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(sy);
        return this with
        {
            Left = Left + (Width / 2 * ((1 / sx) - 1)) - (dx / sx),
            Top = Top + (Height / 2 * ((1 / sy) - 1)) - (dy / sy),
            PitchX = PitchX / sx,
            PitchY = PitchY / sy,
        };
    }
}
