using JarLabel.Core.Reading;

namespace JarLabel.Operations.Lists;

/// <summary>Reads a table of separated values (RFC 4180; comma, semicolon or tab), its first row the names of the columns, one row a line.</summary>
internal static class ListFile
{
    /// <summary>The longest table that is taken at once.</summary>
    internal const int MostRows = 10_000;

    /// <summary>Ten times the longest row that can be meant.</summary>
    internal const int LongestLine = 32 * 1024;

    /// <summary>Empty lines count too, so that a file of nothing else ends.</summary>
    private const int MostLines = 10 * MostRows;

    /// <summary>Every row as it was read; problems of the file as a whole, all at once.</summary>
    /// <param name="file">The file.</param>
    /// <param name="known">The columns there may be.</param>
    /// <param name="needed">The columns there must be.</param>
    internal static Result<IReadOnlyList<ListRow>> Read(string file, IReadOnlyList<string> known, IReadOnlyList<string> needed)
    {
        try
        {
            using var stream = InputFile.Open(file);
            return Lines(stream, Path.GetFileName(file)).Then(lines => Rows(lines, Path.GetFileName(file), known, needed));
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return ListProblems.NotReadable(file, fault.Message);
        }
    }

    /// <summary>The lines with something on them, as text.</summary>
    private static Result<IReadOnlyList<(int Line, string Text)>> Lines(Stream stream, string file)
    {
        var (reader, lines) = (new TextLines(stream, LongestLine), new List<(int, string)>());
        while (reader.Next())
        {
            if (Fault(reader, file) is { } problem)
            {
                return problem;
            }

            var text = Encoding.UTF8.GetString(reader.Bytes.Span).TrimStart('\uFEFF');
            if (!string.IsNullOrWhiteSpace(text))
            {
                lines.Add((reader.Number, text));
            }

            if (lines.Count > MostRows + 1 || reader.Number > MostLines)
            {
                return ListProblems.TooLong(file, MostRows);
            }
        }

        return lines;
    }

    private static Problem? Fault(TextLines reader, string file) =>
        reader.IsTooLong ? ListProblems.LongLine(Where(file, reader.Number), LongestLine)
        : Utf8Fault.NotUtf8(reader.Bytes.Span) is { } at ? ListProblems.NotUtf8(Where(file, reader.Number), reader.Start + at, reader.Bytes.Span[at], Utf8Fault.IsUtf16(reader.Bytes.Span))
        : reader.Bytes.Span.IndexOf((byte)0) is >= 0 and var zero ? ListProblems.NotUtf8(Where(file, reader.Number), reader.Start + zero, 0, wide: zero == 1)
        : null;

    private static Result<IReadOnlyList<ListRow>> Rows(IReadOnlyList<(int Line, string Text)> lines, string file, IReadOnlyList<string> known, IReadOnlyList<string> needed)
    {
        var separator = lines.Count > 0 ? ListLine.Separator(lines[0].Text) : ',';
        var read = lines.Select(line => (line.Line, Cells: ListLine.Cells(line.Text, separator, Where(file, line.Line)))).ToArray();
        Problem[] unread = [.. read.SelectMany(line => line.Cells.Problems)];
        if (unread.Length > 0)
        {
            return Result<IReadOnlyList<ListRow>>.Failed(unread);
        }

        var filled = read.Select(line => (line.Line, Cells: line.Cells.Require())).Where(line => line.Cells.Any(cell => cell.Length > 0)).ToArray();
        return filled.Length > 0
            ? Under([.. filled[0].Cells.Select(cell => cell.ToLowerInvariant())], filled[1..], file, known, needed)
            : ListProblems.Empty(file, needed);
    }

    private static Result<IReadOnlyList<ListRow>> Under(string[] columns, (int Line, string[] Cells)[] rows, string file, IReadOnlyList<string> known, IReadOnlyList<string> needed)
    {
        Problem[] problems = [.. OfHeader(columns, file, known, needed)];
        return problems.Length > 0 ? Result<IReadOnlyList<ListRow>>.Failed(problems)
            : rows.Length == 0 ? ListProblems.Empty(file, needed)
            : Result<IReadOnlyList<ListRow>>.Of([.. rows.Select(row => new ListRow(file, row.Line, columns, row.Cells))]);
    }

    private static string Where(string file, int line) => string.Create(CultureInfo.InvariantCulture, $"{file} line {line}");

    private static IEnumerable<Problem> OfHeader(string[] columns, string file, IReadOnlyList<string> known, IReadOnlyList<string> needed) =>
    [
        .. columns.Where(column => column.Length > 0 && !known.Contains(column)).Select(column => ListProblems.UnknownColumn(file, column, known)),
        .. columns.Where(column => column.Length > 0).GroupBy(column => column, StringComparer.Ordinal).Where(same => same.Count() > 1).Select(same => ListProblems.DoubledColumn(file, same.Key)),
        .. needed.Where(column => !columns.Contains(column)).Select(column => ListProblems.MissingColumn(file, column, known)),
    ];
}
