namespace JarLabel.Layout.Fitting;

/// <summary>One printed line of a table, counted from 0.</summary>
internal readonly record struct TableLine(int Index, Paragraph[] Cells);
