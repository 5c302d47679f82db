namespace JarLabel.Layout.Fitting;

/// <summary>Rows of cells. The last rows are left out first; of a history those between the first and the newest, with a line that counts them.</summary>
internal sealed class TablePart : Part
{
    private readonly TableBox box;
    private readonly IReadOnlyList<IReadOnlyList<string>> rows;
    private readonly Typography[] types;
    private readonly TableLine[] lines;
    private TableLine[] parted = [];
    private int partedAt = -1;

    internal TablePart(Fit fit, TableBox box, Voice voice, Ladder ladder)
        : base(fit, box.Frame)
    {
        this.box = box;
        rows = fit.Text.Tables.GetValueOrDefault(box.Table) ?? [];
        types = [.. Enumerable.Repeat(box.Columns, box.PerLine).SelectMany(columns => columns).Select(column => new Typography(fit.Ruler, ladder, fit.Sure(column.Face ?? voice.Face, ladder)))];
        Count = Math.Max(0, Math.Min(rows.Count - Headings, box.Most));
        lines = [.. rows.Take(box.Between is null ? Headings + Count : rows.Count).Select(Padded).Chunk(box.PerLine).Select((group, index) => Line([.. group.SelectMany(cells => cells)], index))];
    }

    internal override int Count { get; }

    internal override int Least => box.Least;

    internal override IEnumerable<string> Moved => (IsParted ? rows.Skip(Begun).Take(Hidden) : rows.Skip(ShownRows)).Select(Spoken);

    internal override IEnumerable<string> Texts => rows.Skip(Headings).Select(Spoken);

    private int ShownRows => Headings + Count - LeftOut;

    private int Headings => box.Heading ? 1 : 0;

    private int Hidden => rows.Count - ShownRows;

    private bool IsParted => box.Between is not null && Hidden > 0;

    /// <summary>Rows before the line that counts those left out: the heading and the beginning.</summary>
    private int Begun => Math.Min(Headings + 1, ShownRows);

    private ReadOnlySpan<TableLine> ShownLines => IsParted ? Parted() : lines.AsSpan(0, (ShownRows + box.PerLine - 1) / box.PerLine);

    // Lines follow at the line distance of running text.
    private double Between => types[0].LineDistance - types[0].HeightOf(1) + box.RowGap + box.Rule;

    // From a baseline to the top of the next line's capitals: a rule stands in its middle.
    private double FootToTop => types[0].LineDistance + box.RowGap + box.Rule - types[0].CapHeight;

    internal override void Draw(Area area, Ink ink, List<Mark> marks)
    {
        var widths = Widths(area.Width);
        area = area.Piece(Math.Min(area.Width, WidthOf(widths)), NaturalHeight(area.Width), Frame.Across, Frame.Down);
        var y = area.Y;
        foreach (var line in ShownLines)
        {
            if (line.Index > 0 && box.Rule > 0)
                marks.Add(new BarMark(Frame.Name, area.X, y - ((FootToTop + box.Rule) / 2), area.Width, box.Rule, ink));
            DrawLine(line, widths, area with { Y = y }, ink, marks);
            y += HeightOf(line, widths) + Between;
        }
    }

    protected override double NaturalWidth()
    {
        var widths = new double[types.Length];
        for (var column = 0; column < widths.Length; column++)
            widths[column] = ColumnWidth(column);
        return WidthOf(widths);
    }

    protected override double NaturalHeight(double width)
    {
        var widths = Widths(width);
        var height = -Between;
        foreach (var line in ShownLines)
            height += HeightOf(line, widths) + Between;
        return height;
    }

    private static string Spoken(IReadOnlyList<string> row) => string.Join(' ', row.Where(cell => cell.Length > 0));

    private IEnumerable<string> Padded(IReadOnlyList<string> row) =>
        Enumerable.Range(0, box.Columns.Count).Select(column => column < row.Count ? row[column] : "");

    private TableLine Line(string[] cells, int index) => new(index, [.. cells.Select((cell, column) => Set(cell, column, box.Heading && index == 0))]);

    private TableLine[] Parted()
    {
        if (partedAt == LeftOut)
            return parted;
        partedAt = LeftOut;
        var told = (Fit.Text.Words.GetValueOrDefault(box.Between!)?[0] ?? "").Replace("{0}", Hidden.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal);
        string[] between = [.. Enumerable.Repeat("", box.Columns.Count - 1), told];
        if (between.Length > 1)
            between[0] = "…";
        TableLine[] all = [.. lines[..Begun], Line(between, Begun), .. lines[(Begun + Hidden)..]];
        return parted = [.. all.Select((line, index) => line with { Index = index })];
    }

    private Paragraph Set(string cell, int column, bool heading) => Fit.ParagraphOf(cell, heading ? Face.SemiBold : types[column].Face);

    private TableColumn ColumnAt(int column) => box.Columns[column % box.Columns.Count];

    private bool IsShown(TableLine line, int column) =>
        IsParted || (line.Index * box.PerLine) + (column / box.Columns.Count) < ShownRows;

    private double GapBefore(int column) => column == 0 ? 0 : column % box.Columns.Count == 0 ? box.LineGap : box.Gap;

    private double ColumnWidth(int column)
    {
        var widest = 0.0;
        foreach (var line in ShownLines)
        {
            if (column < line.Cells.Length)
                widest = Math.Max(widest, line.Cells[column].WidthAt(types[column].Points));
        }

        return widest;
    }

    private double[] Widths(double width)
    {
        var widths = new double[types.Length];
        var (spare, growing) = (width, 0);
        for (var column = 0; column < widths.Length; column++)
        {
            widths[column] = ColumnAt(column).Grow ? 0 : ColumnWidth(column);
            growing += ColumnAt(column).Grow ? 1 : 0;
            spare -= widths[column] + GapBefore(column);
        }

        Fit.NeedWidth(this, () => Spoken(rows[0]), width - spare, width);
        for (var column = 0; column < widths.Length; column++)
            widths[column] += ColumnAt(column).Grow ? Math.Max(0, spare / growing) : 0;
        return widths;
    }

    private double WidthOf(double[] widths)
    {
        var width = 0.0;
        for (var column = 0; column < widths.Length; column++)
            width += widths[column] + GapBefore(column);
        return width;
    }

    private double HeightOf(TableLine line, double[] widths)
    {
        var deepest = 1;
        for (var column = 0; column < line.Cells.Length; column++)
        {
            var cell = line.Cells[column];
            Fit.NeedWidth(this, cell.Text, cell.WidestWordAt(types[column].Points), widths[column]);
            deepest = Math.Max(deepest, cell.LinesAt(types[column].Points, widths[column]).Count);
        }

        return types[0].HeightOf(deepest);
    }

    private void DrawLine(TableLine line, double[] widths, Area area, Ink ink, List<Mark> marks)
    {
        var x = area.X;
        for (var column = 0; column < line.Cells.Length; column++)
        {
            var cell = line.Cells[column];
            x += GapBefore(column);
            if (cell.Text.Length > 0 && IsShown(line, column))
                DrawCell(cell, column, area with { X = x, Width = widths[column] }, ink, marks);
            x += widths[column];
        }
    }

    private void DrawCell(Paragraph cell, int column, Area area, Ink ink, List<Mark> marks)
    {
        var type = new Typography(Fit.Ruler, types[column].Ladder, cell.Face);
        type.Set(Frame.Name, cell.LinesAt(type.Points, area.Width), area, ColumnAt(column).Across, ink, marks);
    }
}

/// <summary>One printed line of a table, counted from 0.</summary>
internal readonly record struct TableLine(int Index, Paragraph[] Cells);
