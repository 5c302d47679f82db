namespace JarLabel.Web.Forms;

/// <summary>What was filled in, read field by field under the same names as on the command line. A fault is noted and the reading goes on,
/// so that all faults are told at once.</summary>
/// <param name="fields">What the form sent.</param>
internal sealed class FormValues(IReadOnlyDictionary<string, string> fields)
{
    /// <summary>What a form says of itself and not of what was filled in.</summary>
    private static readonly string[] OfForm = ["token", "once", "seen", "do"];

    private readonly List<Problem> problems = [];

    /// <summary>A print of what was filled in: the same for the same values, whatever the form says of itself.</summary>
    internal string Print => field ??= Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\0', fields.Keys
        .Except(OfForm).Where(Ticked).Order(StringComparer.Ordinal).SelectMany(name => (string[])[name, Text(name)!])))));

    /// <summary>What a field holds; null when it is empty.</summary>
    internal string? Text(string where) => fields.GetValueOrDefault(where) is { } text && !string.IsNullOrWhiteSpace(text) ? text.Trim() : null;

    /// <summary>The address by which the page was asked for; null where that is this machine's own.</summary>
    internal string? Came { get; init; }

    /// <summary>True when the field came along, filled in or not.</summary>
    internal bool Sent(string where) => fields.ContainsKey(where);

    /// <summary>True when the box is ticked.</summary>
    internal bool Ticked(string where) => Text(where) is not null;

    /// <summary>The value, or null when the field is empty or cannot be read.</summary>
    internal T? Fact<T>(string where, Func<string, string, Result<T>> read)
        where T : class => Text(where) is { } text && Take(read(text, where), out var value) ? value : null;

    /// <summary>The value, which must be given.</summary>
    internal T Needed<T>(string where, string label, string example, Func<string, string, Result<T>> read)
        where T : notnull
    {
        if (Text(where) is not { } text)
        {
            problems.Add(TypingProblems.Empty(where, label, example));
            return default!;
        }

        return Take(read(text, where), out var value) ? value! : default!;
    }

    /// <summary>A value that was looked up, or its problems noted.</summary>
    internal T Taken<T>(Result<T> result)
        where T : notnull => Take(result, out var value) ? value! : default!;

    /// <summary>Notes a fault.</summary>
    internal void Refuse(Problem problem) => problems.Add(problem);

    /// <summary>Goes on when everything could be read; otherwise all the problems.</summary>
    internal Result<T> Then<T>(Func<Result<T>> next)
        where T : notnull => problems.Count == 0 ? next() : Result<T>.Failed(problems);

    private bool Take<T>(Result<T> result, out T? value)
        where T : notnull
    {
        var ok = result.TryGet(out value, out var faults);
        problems.AddRange(faults);
        return ok;
    }
}
