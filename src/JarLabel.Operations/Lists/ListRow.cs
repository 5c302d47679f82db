using JarLabel.Operations.Steps;

namespace JarLabel.Operations.Lists;

/// <summary>One row of a list, read cell by cell. A fault is noted and the reading goes on, so that all faults of all rows are told at once.</summary>
internal sealed class ListRow : IValueSource
{
    private readonly string file;
    private readonly int line;
    private readonly Dictionary<string, string> cells = new(StringComparer.Ordinal);
    private readonly List<Problem> problems = [];

    internal ListRow(string file, int line, string[] columns, string[] cells)
    {
        this.file = file;
        this.line = line;
        foreach (var (i, cell) in cells.Index())
        {
            if (cell.Length > 0 && (i >= columns.Length || columns[i].Length == 0))
            {
                problems.Add(ListProblems.CellWithoutColumn(Where, cell));
            }
            else if (cell.Length > 0)
            {
                this.cells.TryAdd(columns[i], cell);
            }
        }
    }

    /// <summary>Everything that was wrong with it so far.</summary>
    internal IReadOnlyList<Problem> Problems => problems;

    /// <summary>The file and the line in it.</summary>
    internal string Where => string.Create(CultureInfo.InvariantCulture, $"{file} line {line}");

    /// <summary>The cell's text; null when it is empty.</summary>
    internal string? Text(string column) => cells.GetValueOrDefault(column);

    /// <summary>The cell's value; null when it is empty or cannot be read.</summary>
    internal T? Value<T>(string column, Func<string, string, Result<T>> read)
        where T : struct => Text(column) is { } text && Take(column, read(text, column), out var value) ? value : null;

    /// <summary>What a step wants to know, read from the columns that are called like its fields.</summary>
    internal T Read<T>(Workbench bench, Input<T> input)
    {
        var values = new Values(bench, this);
        _ = values.TryRead(input, out var read);
        problems.AddRange(values.Problems.Select(Here));
        return read;
    }

    IReadOnlyList<string> IValueSource.Texts(string name) => Text(name) is { } text ? [text] : [];

    Problem IValueSource.Missing(Field field) => ListProblems.EmptyCell(field.Name, field.Example);

    /// <summary>The cell's value, which must be there.</summary>
    internal T Needed<T>(string column, string example, Func<string, string, Result<T>> read)
        where T : notnull
    {
        if (Text(column) is not { } text)
        {
            problems.Add(ListProblems.EmptyCell($"{Where}, {column}", example));
            return default!;
        }

        return Take(column, read(text, column), out var value) ? value! : default!;
    }

    /// <summary>Goes on when everything could be read; otherwise the row's problems. What then goes wrong is told with the row's place.</summary>
    internal Result<T> Then<T>(Func<Result<T>> next)
        where T : notnull
    {
        if (problems.Count > 0)
        {
            return Result<T>.Failed(problems);
        }

        var result = next();
        return result.Ok ? result : Result<T>.Failed([.. result.Problems.Select(Here)]);
    }

    /// <summary>A fault with its place in the list.</summary>
    private Problem Here(Problem fault) => fault with { Where = fault.Where is null ? Where : $"{Where}, {fault.Where}" };

    private bool Take<T>(string column, Result<T> result, out T? value)
        where T : notnull
    {
        var ok = result.TryGet(out value, out var faults);
        problems.AddRange(faults.Select(fault => fault with { Where = $"{Where}, {column}" }));
        return ok;
    }
}
