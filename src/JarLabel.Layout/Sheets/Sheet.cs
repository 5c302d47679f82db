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
    /// <summary>How many labels a page holds.</summary>
    public int Places => Columns * Rows;

    /// <summary>The place of one label. Places are counted from 1, along each row from the top left.</summary>
    public LabelArea AreaAt(int place)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(place, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(place, Places);
        var (row, column) = Math.DivRem(place - 1, Columns);
        return new LabelArea(Shape, Left + (column * PitchX), Top + (row * PitchY), Width, Height, Dpi);
    }
}
