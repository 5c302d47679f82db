namespace JarLabel.Operations.Lists;

/// <summary>One line of a list, parted into its cells as RFC 4180 writes them: a text with the separator or a quotation mark in it stands in quotes,
/// the mark doubled. What does not is refused, because one stray mark would swallow the rows behind it. A cell holds no line break.</summary>
internal static class ListLine
{
    private static readonly char[] Separators = ['\t', ';', ','];

    /// <summary>What parts the cells of a list: of the signs that do, the one that stands in its first row most often.</summary>
    internal static char Separator(string header) => Separators.MaxBy(sign => Outside(header).Count(c => c == sign));

    /// <summary>The cells without the spaces around them, or what is wrong with the line.</summary>
    internal static Result<string[]> Cells(string line, char separator, string where)
    {
        var cells = new List<string>();
        for (var at = 0; at <= line.Length; at++)
        {
            if (!Cell(line, separator, where, ref at).TryGet(out var cell, out var problems))
            {
                return Result<string[]>.Failed(problems);
            }

            cells.Add(cell);
        }

        return cells.ToArray();
    }

    /// <summary>Reads from where a cell begins and goes on to the separator behind it, or to the end.</summary>
    private static Result<string> Cell(string line, char separator, string where, ref int at)
    {
        var end = line.IndexOf(separator, at) is >= 0 and var next ? next : line.Length;
        var begin = at;
        while (begin < end && line[begin] is ' ' or '\t')
        {
            begin++;
        }

        if (begin < end && line[begin] == '"')
        {
            return Quoted(line, separator, where, begin + 1, ref at);
        }

        at = end;
        var cell = line[begin..end].TrimEnd();
        return cell.Contains('"') ? ListProblems.StrayMark(where, cell) : cell;
    }

    private static Result<string> Quoted(string line, char separator, string where, int begin, ref int at)
    {
        var close = begin;
        while (true)
        {
            close = line.IndexOf('"', close);
            if (close < 0)
            {
                return ListProblems.OpenMark(where, line[(begin - 1)..]);
            }

            if (close + 1 == line.Length || line[close + 1] != '"')
            {
                break;
            }

            close += 2;
        }

        var end = line.IndexOf(separator, close) is >= 0 and var next ? next : line.Length;
        at = end;
        return string.IsNullOrWhiteSpace(line[(close + 1)..end])
            ? line[begin..close].Replace("\"\"", "\"", StringComparison.Ordinal).Trim()
            : ListProblems.StrayMark(where, line[(begin - 1)..end]);
    }

    private static string Outside(string header) => string.Concat(header.Split('"').Where((_, part) => part % 2 == 0));
}
