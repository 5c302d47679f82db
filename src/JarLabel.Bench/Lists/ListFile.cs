using JarLabel.Core;
using JarLabel.Store.Files;
using nietras.SeparatedValues;

namespace JarLabel.Bench.Lists;

/// <summary>Reads a table of separated values (RFC 4180; comma, semicolon or tab), its first row the names of the columns.</summary>
internal static class ListFile
{
    /// <summary>The longest table that is taken at once.</summary>
    internal const int MostRows = 10_000;

    /// <summary>Every row as it was read; problems of the file as a whole, all at once.</summary>
    /// <param name="file">The file.</param>
    /// <param name="known">The columns there may be.</param>
    /// <param name="needed">The columns there must be.</param>
    internal static Result<IReadOnlyList<ListRow>> Read(string file, IReadOnlyList<string> known, IReadOnlyList<string> needed)
    {
        try
        {
            using var text = new StreamReader(InputFile.Open(file), new System.Text.UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true));
            using var reader = Sep.Reader(options => options with { DisableColCountCheck = true, Unescape = true, HasHeader = false }).From(text);
            return Read(reader, Path.GetFileName(file), known, needed);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return ListProblems.NotReadable(file, fault.Message);
        }
        catch (Exception fault) when (fault is System.Text.DecoderFallbackException or ArgumentException or InvalidDataException or FormatException)
        {
            return ListProblems.NotATable(file);
        }
    }

    private static Result<IReadOnlyList<ListRow>> Read(SepReader reader, string file, IReadOnlyList<string> known, IReadOnlyList<string> needed)
    {
        string[]? columns = null;
        var (rows, problems) = (new List<ListRow>(), new List<Problem>());
        foreach (var read in reader)
        {
            var cells = Cells(read);
            if (cells.All(cell => cell.Length == 0))
            {
                continue;
            }

            if (columns is null)
            {
                columns = [.. cells.Select(cell => cell.ToLowerInvariant())];
                problems.AddRange(OfHeader(columns, file, known, needed));
            }
            else
            {
                rows.Add(new ListRow(file, read.LineNumberFrom, columns, cells));
            }

            if (rows.Count > MostRows)
            {
                return ListProblems.TooLong(file, MostRows);
            }
        }

        if (rows.Count == 0 && problems.Count == 0)
        {
            return ListProblems.Empty(file, needed);
        }

        return problems.Count > 0 ? Result<IReadOnlyList<ListRow>>.Failed(problems) : Result<IReadOnlyList<ListRow>>.Of(rows);
    }

    private static string[] Cells(SepReader.Row read)
    {
        var cells = new string[read.ColCount];
        for (var i = 0; i < cells.Length; i++)
        {
            cells[i] = read[i].ToString().Trim();
        }

        return cells;
    }

    private static IEnumerable<Problem> OfHeader(string[] columns, string file, IReadOnlyList<string> known, IReadOnlyList<string> needed) =>
    [
        .. columns.Where(column => column.Length > 0 && !known.Contains(column)).Select(column => ListProblems.UnknownColumn(file, column, known)),
        .. columns.Where(column => column.Length > 0).GroupBy(column => column, StringComparer.Ordinal).Where(same => same.Count() > 1).Select(same => ListProblems.DoubledColumn(file, same.Key)),
        .. needed.Where(column => !columns.Contains(column)).Select(column => ListProblems.MissingColumn(file, column, known)),
    ];
}
