namespace JarLabel.Bench.Answers;

/// <summary>Lines of one kind as rows, of which only the first has the name.</summary>
internal static class ListedRows
{
    internal static IEnumerable<(string Name, string? Value)> Of(string name, IEnumerable<string> lines) => lines.Select((line, i) => (i == 0 ? name : "", (string?)line));
}
