using JarLabel.Layout.Designs;
using JarLabel.Layout.Marks;

namespace JarLabel.Layout.Fitting;

/// <summary>Rows of cells; the last rows are left out first.</summary>
internal sealed class TablePart : Part
{
    private readonly TableBox box;
    private readonly IReadOnlyList<IReadOnlyList<string>> rows;
    private readonly Typography[] types;
    private readonly Paragraph[][] cells;

    internal TablePart(Fit fit, TableBox box, Voice voice, Ladder ladder)
        : base(fit, box.Frame)
    {
        this.box = box;
        rows = fit.Text.Tables.GetValueOrDefault(box.Table) ?? [];
        types = [.. box.Columns.Select(column => new Typography(fit.Ruler, ladder, column.Face ?? voice.Face))];
        cells = [.. rows.Take(box.Most + Headings).Select(Cells)];
    }

    internal override int Count => Math.Max(0, cells.Length - Headings);

    internal override int Least => box.Least;

    internal override IEnumerable<string> Moved => rows.Skip(Headings + Count - LeftOut).Select(Spoken);

    internal override IEnumerable<string> Texts => rows.Skip(Headings).Select(Spoken);

    private int Headings => box.Heading ? 1 : 0;

    private ReadOnlySpan<Paragraph[]> ShownCells => cells.AsSpan(0, Headings + Count - LeftOut);

    internal override void Draw(Area area, Ink ink, List<Mark> marks)
    {
        var widths = Widths(area.Width);
        var y = area.Piece(area.Width, NaturalHeight(area.Width), Align.Start, Frame.Down).Y;
        var first = true;
        foreach (var row in ShownCells)
        {
            if (!first && box.Rule > 0)
                marks.Add(new BarMark(Frame.Name, area.X, y - ((box.RowGap + box.Rule) / 2) - Foot, area.Width, box.Rule, ink));
            DrawRow(row, widths, new Area(area.X, y, area.Width, 0), ink, marks);
            y += RowHeight(row, widths) + RowDistance;
            first = false;
        }
    }

    protected override double NaturalWidth()
    {
        var widths = 0.0;
        for (var column = 0; column < types.Length; column++)
            widths += ColumnWidth(column);
        return widths + Gaps;
    }

    protected override double NaturalHeight(double width)
    {
        var widths = Widths(width);
        var height = 0.0;
        foreach (var row in ShownCells)
            height += RowHeight(row, widths) + RowDistance;
        return height - RowDistance;
    }

    private double Gaps => (types.Length - 1) * box.Gap;

    // Rows follow at the line distance, measured between the feet of their boxes.
    private double RowDistance => types[0].LineDistance - types[0].HeightOf(1) + box.RowGap + box.Rule;

    private double Foot => (types[0].LineDistance - types[0].HeightOf(1)) / 2;

    private static string Spoken(IReadOnlyList<string> row) => string.Join(' ', row.Where(cell => cell.Length > 0));

    private Paragraph[] Cells(IReadOnlyList<string> row, int index)
    {
        var heading = box.Heading && index == 0;
        return [.. row.Take(types.Length).Select((cell, column) => new Paragraph(cell, heading ? Face.SemiBold : types[column].Face, Fit.Ruler))];
    }

    private double ColumnWidth(int column)
    {
        var widest = 0.0;
        foreach (var row in ShownCells)
        {
            if (column < row.Length)
                widest = Math.Max(widest, row[column].WidthAt(types[column].Points));
        }

        return widest;
    }

    private double[] Widths(double width)
    {
        var widths = new double[types.Length];
        for (var column = 0; column < widths.Length; column++)
            widths[column] = box.Columns[column].Grow ? 0 : ColumnWidth(column);
        var spare = width - Gaps - widths.Sum();
        var growing = box.Columns.Count(column => column.Grow);
        if (growing == 0 || spare < 0)
            Fit.NeedWidth(this, Spoken(rows[0]), widths.Sum() + Gaps, width);
        for (var column = 0; column < widths.Length; column++)
        {
            if (box.Columns[column].Grow)
                widths[column] = Math.Max(0, spare / growing);
        }

        return widths;
    }

    private double RowHeight(Paragraph[] row, double[] widths)
    {
        var lines = 1;
        for (var column = 0; column < row.Length; column++)
        {
            Fit.NeedWidth(this, row[column].Text, row[column].WidestWordAt(types[column].Points), widths[column]);
            lines = Math.Max(lines, row[column].LinesAt(types[column].Points, widths[column]).Count);
        }

        return types[0].HeightOf(lines);
    }

    private void DrawRow(Paragraph[] row, double[] widths, Area area, Ink ink, List<Mark> marks)
    {
        var x = area.X;
        for (var column = 0; column < row.Length; column++)
        {
            var cell = row[column];
            if (cell.Text.Length > 0)
            {
                var type = new Typography(Fit.Ruler, types[column].Ladder, cell.Face);
                type.Set(Frame.Name, cell.LinesAt(type.Points, widths[column]), area with { X = x, Width = widths[column] }, box.Columns[column].Across, ink, marks);
            }

            x += widths[column] + box.Gap;
        }
    }
}
