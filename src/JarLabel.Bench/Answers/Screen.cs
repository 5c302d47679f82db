namespace JarLabel.Bench.Answers;

/// <summary>What a command shows a person: a title, rows of two columns, tables with aligned figures, and the next useful command.
/// Lines are kept as parts and styled only when they are written.</summary>
internal sealed class Screen
{
    private readonly List<ScreenLine> lines = [];

    /// <summary>The lines in order.</summary>
    internal IReadOnlyList<ScreenLine> Lines => lines;

    internal Screen Title(string text) => Add(LineStyle.Title, text);

    internal Screen Text(string text) => Add(LineStyle.Plain, text);

    internal Screen Gap() => Add(LineStyle.Plain, "");

    /// <summary>A caution: said once, in one style everywhere.</summary>
    internal Screen Caution(string text) => Add(LineStyle.Caution, text);

    /// <summary>One more row after all that was said, before the next command.</summary>
    internal Screen Told(string name, string value)
    {
        var last = lines.FindLastIndex(l => l.Style == LineStyle.Next);
        lines.InsertRange(last < 1 ? lines.Count : last - 1, [new ScreenLine(LineStyle.Plain, ""), new ScreenLine(LineStyle.Row, $"  {name}   {value}")]);
        return this;
    }

    /// <summary>Says behind the title that nothing of it happened.</summary>
    internal Screen Rehearsed()
    {
        lines.Insert(lines.FindIndex(l => l.Style == LineStyle.Title) + 1, new ScreenLine(LineStyle.Plain, "  Only worked out, as it would be: nothing is recorded, written or sent."));
        return this;
    }

    /// <summary>The next useful command, always last.</summary>
    internal Screen Next(string command) => Gap().Add(LineStyle.Next, command);

    /// <summary>Rows of two columns, the second ones aligned. Rows whose value is null are left out.</summary>
    internal Screen Rows(params IEnumerable<(string Name, string? Value)> rows)
    {
        var shown = rows.Where(r => r.Value is not null).ToArray();
        var width = shown.Select(r => r.Name.Length).DefaultIfEmpty().Max();
        foreach (var (name, value) in shown)
        {
            Add(LineStyle.Row, $"  {name.PadRight(width)}   {value}");
        }

        return this;
    }

    /// <summary>A table; columns whose header starts with a blank are aligned to the right.</summary>
    /// <param name="header">The names of the columns.</param>
    /// <param name="rows">Their cells.</param>
    /// <param name="style">The style of a row by its place; null for plain rows.</param>
    internal Screen Table(IReadOnlyList<string> header, IReadOnlyList<IReadOnlyList<string>> rows, Func<int, LineStyle>? style = null)
    {
        IReadOnlyList<IReadOnlyList<string>> cells = [[.. header.Select(h => h.Trim())], .. rows];
        var right = header.Select(h => h.StartsWith(' ')).ToArray();
        var spelled = Aligned([.. cells.Select(row => row.Select(PlainAscii.Of).ToArray())], right);
        foreach (var (place, line) in Aligned(cells, right).Index())
        {
            lines.Add(new ScreenLine(place == 0 ? LineStyle.Header : style?.Invoke(place - 1) ?? LineStyle.Row, line) { Plain = spelled[place] });
        }

        return this;
    }

    private static string[] Aligned(IReadOnlyList<IReadOnlyList<string>> rows, bool[] right)
    {
        var widths = right.Select((_, i) => rows.Max(row => row[i].Length)).ToArray();
        return [.. rows.Select(row => ("  " + string.Join("   ", row.Select((cell, i) => right[i] ? cell.PadLeft(widths[i]) : cell.PadRight(widths[i])))).TrimEnd())];
    }

    private Screen Add(LineStyle style, string text)
    {
        lines.Add(new ScreenLine(style, text));
        return this;
    }
}
