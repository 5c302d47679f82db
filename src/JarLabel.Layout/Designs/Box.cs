namespace JarLabel.Layout.Designs;

/// <summary>One box of a design's tree. A box whose text or symbols are absent from the label takes no room at all.</summary>
/// <param name="Frame">What every box has.</param>
public abstract record Box(BoxFrame Frame);

/// <summary>The label's largest figure, its fraction stacked over a bar as on a rule: it keeps the whole number wide and reads from afar,
/// where a typeface's own fraction glyph falls apart.</summary>
/// <param name="Frame">What every box has.</param>
/// <param name="Word">Its key in the label's words, such as <c>cut</c>.</param>
/// <param name="Voice">The voice it speaks in.</param>
public sealed record FigureBox(BoxFrame Frame, string Word, string Voice) : Box(Frame);

/// <summary>Sentences in order of importance.</summary>
/// <param name="Frame">What every box has.</param>
/// <param name="List">Its key in the label's lists.</param>
/// <param name="Voice">The voice it speaks in.</param>
/// <param name="Face">A weight other than the voice's; null for the voice's.</param>
/// <param name="Running">True for one running paragraph, false for a new line each.</param>
/// <param name="Least">How many sentences must stay when <see cref="BoxFrame.Drop"/> is set.</param>
/// <param name="Most">How many are shown at most.</param>
public sealed record ListBox(BoxFrame Frame, string List, string Voice, Face? Face, bool Running, int Least, int Most) : Box(Frame);

/// <summary>The label's code, with its quiet zone inside the box.</summary>
/// <param name="Frame">What every box has.</param>
/// <param name="Module">Side of one module that is wanted, mm; it is brought to whole printer dots.</param>
/// <param name="LeastModule">Smallest side allowed, mm.</param>
public sealed record QrBox(BoxFrame Frame, double Module, double LeastModule) : Box(Frame);

/// <summary>A line across its parent's direction.</summary>
/// <param name="Frame">What every box has.</param>
/// <param name="Thickness">Its thickness, mm, at least 0.25.</param>
public sealed record RuleBox(BoxFrame Frame, double Thickness) : Box(Frame);

/// <summary>White.</summary>
/// <param name="Frame">What every box has.</param>
public sealed record SpaceBox(BoxFrame Frame) : Box(Frame);

/// <summary>Boxes one after the other.</summary>
/// <param name="Frame">What every box has.</param>
/// <param name="Downwards">True for rows, false for columns.</param>
/// <param name="Gap">White between neighbours, mm.</param>
/// <param name="Pad">White around all of them, mm; a panel's inner edge.</param>
/// <param name="Fill">The panel's colour; null for bare paper.</param>
/// <param name="Ink">The colour of what stands inside; null as outside.</param>
/// <param name="Boxes">What stands inside, in order.</param>
public sealed record StackBox(
    BoxFrame Frame, bool Downwards, double Gap, double Pad, Ink? Fill, Ink? Ink, IReadOnlyList<Box> Boxes) : Box(Frame);

/// <summary>Hazard pictograms or safety signs in a row.</summary>
/// <param name="Frame">What every box has.</param>
/// <param name="Codes">Which ones; empty for those of the label.</param>
/// <param name="Sizes">Widths from the largest to the smallest allowed, mm. A pictogram on its point is measured from tip to tip,
/// so a side of 10 mm is 14.2 here.</param>
/// <param name="Gap">White between neighbours, mm.</param>
/// <param name="PerRow">How many stand side by side before a new row.</param>
/// <param name="With">A word of the label without which they are not shown, such as <c>poison</c>; null for always.</param>
/// <param name="Unless">A pictogram of the label beside which they say nothing more, such as <c>GHS06</c>; null for none.</param>
public sealed record SymbolsBox(BoxFrame Frame, IReadOnlyList<string> Codes, IReadOnlyList<double> Sizes, double Gap, int PerRow, string? With, string? Unless) : Box(Frame);

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

/// <summary>One column of a table.</summary>
/// <param name="Face">Its weight; null for the voice's.</param>
/// <param name="Across">Where its cells stand from left to right.</param>
/// <param name="Grow">True when it takes the width that is left and breaks its cells into lines.</param>
public sealed record TableColumn(Face? Face, Align Across, bool Grow);

/// <summary>One wording of the label.</summary>
/// <param name="Frame">What every box has.</param>
/// <param name="Word">Its key in the label's words.</param>
/// <param name="Voice">The voice it speaks in.</param>
/// <param name="Face">A weight other than the voice's; null for the voice's.</param>
/// <param name="Lines">On how many lines it may be broken.</param>
/// <param name="Trim">True when the box ends at the last baseline, so that figures of two sizes stand on one line.</param>
public sealed record TextBox(BoxFrame Frame, string Word, string Voice, Face? Face, int Lines, bool Trim) : Box(Frame);

/// <summary>Five small squares, filled from the left by how dark the grade is; the last is ringed when the grade holds its wax.</summary>
/// <param name="Frame">What every box has.</param>
/// <param name="Side">Side of one square, mm.</param>
/// <param name="Downwards">True when the squares stand below each other, filled from the bottom.</param>
public sealed record ToneBox(BoxFrame Frame, double Side, bool Downwards) : Box(Frame);
