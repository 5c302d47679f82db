namespace JarLabel.Layout.Designs;

/// <summary>Rows of cells in order of importance.</summary>
/// <param name="Frame">What every box has.</param>
/// <param name="Table">Its key in the label's tables.</param>
/// <param name="Voice">The voice it speaks in.</param>
/// <param name="Columns">Its columns; cells beyond them are not shown.</param>
/// <param name="PerLine">How many rows stand side by side on one line.</param>
/// <param name="Gap">White between columns, mm.</param>
/// <param name="LineGap">White between rows that stand side by side, mm.</param>
/// <param name="RowGap">White between rows beyond the line distance, mm.</param>
/// <param name="Rule">Thickness of a line between rows, mm; 0 for none.</param>
/// <param name="Heading">True when the first row names the columns: bold, and never left out.</param>
/// <param name="Least">How many rows must stay when <see cref="BoxFrame.Drop"/> is set.</param>
/// <param name="Most">How many rows are shown at most.</param>
/// <param name="Between">For a history: the key of the line that stands for rows left out of the middle, which are then the first to go; null where the
/// last rows go.</param>
public sealed record TableBox(
    BoxFrame Frame,
    string Table,
    string Voice,
    IReadOnlyList<TableColumn> Columns,
    int PerLine,
    double Gap,
    double LineGap,
    double RowGap,
    double Rule,
    bool Heading,
    int Least,
    int Most,
    string? Between) : Box(Frame);
