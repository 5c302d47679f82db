namespace JarLabel.Operations.Steps;

/// <summary>Where filled-in texts come from: a command line, a form, a row of a list.</summary>
internal interface IValueSource
{
    /// <summary>What was filled in under a name, each time it was.</summary>
    IReadOnlyList<string> Texts(string name);

    /// <summary>What was filled in under a name; null when nothing was.</summary>
    string? Text(string name) => Texts(name) is [var first, ..] ? first : null;

    /// <summary>True where something stood in a field and was taken out of it.</summary>
    bool IsEmptied(string name) => false;

    /// <summary>What stood in a field before it was changed, line by line; null where nobody saw it.</summary>
    IReadOnlyList<string>? Shown(string name) => null;

    /// <summary>What is said when a field that is needed is empty.</summary>
    Problem Missing(Field field);

    /// <summary>True where whoever fills in is at the machine itself, so that it may be a file there.</summary>
    bool IsAtTheMachine => false;

    /// <summary>Lines typed or scanned after what was filled in.</summary>
    IReadOnlyList<string> Lines() => [];
}

/// <summary>What was filled in, each input read once. Faults are noted and the reading goes on, so that all are told together.</summary>
internal sealed class Values(Workbench bench, IValueSource source)
{
    private readonly Dictionary<Input, (bool Ok, object? Value)> read = [];
    private readonly List<Problem> problems = [];

    /// <summary>The shop.</summary>
    internal Workbench Bench => bench;

    /// <summary>All faults so far.</summary>
    internal IReadOnlyList<Problem> Problems => problems;

    /// <summary>What was filled in under a name; null when nothing was.</summary>
    internal string? Text(string name) => source.Text(name);

    /// <summary>What was filled in under a name, each time it was.</summary>
    internal IReadOnlyList<string> Texts(string name) => source.Texts(name);

    /// <summary>Reads inputs to the last, whatever is wrong with the first; true when all could be read.</summary>
    internal bool ReadAll(IReadOnlyList<Input> inputs)
    {
        var ok = true;
        foreach (var input in inputs)
        {
            ok &= input.ReadInto(this);
        }

        return ok;
    }

    /// <summary>Where it comes from.</summary>
    internal IValueSource Source => source;

    /// <summary>The value of an input that the step declares, which could be read.</summary>
    internal T Get<T>(Input<T> input) => read.TryGetValue(input, out var found) && found.Ok
        ? (T)found.Value!
        : throw new InvalidOperationException($"The step does not declare {input.Field.Name}.");

    /// <summary>Reads an input, once.</summary>
    internal bool TryRead<T>(Input<T> input, out T value)
    {
        if (!read.TryGetValue(input, out var found))
        {
            var ok = input.TryRead(this, input.Field, out var fresh);
            read[input] = found = (ok, fresh);
        }

        value = found.Ok ? (T)found.Value! : default!;
        return found.Ok;
    }

    /// <summary>Takes a result's value, or notes its problems.</summary>
    internal bool Take<T>(Result<T> result, out T value)
        where T : notnull
    {
        var ok = result.TryGet(out var found, out var faults);
        foreach (var fault in faults)
        {
            Refuse(fault);
        }

        value = found!;
        return ok;
    }

    /// <summary>What is said when a field that is needed is empty.</summary>
    internal Problem Missing(Field field) => source.Missing(field);

    /// <summary>Notes that a field is empty that must not be.</summary>
    internal bool Miss(Field field)
    {
        Refuse(source.Missing(field));
        return false;
    }

    /// <summary>Notes faults.</summary>
    internal void Refuse(IEnumerable<Problem> faults)
    {
        foreach (var fault in faults)
        {
            Refuse(fault);
        }
    }

    private void Refuse(Problem problem)
    {
        if (!problems.Contains(problem))
        {
            problems.Add(problem);
        }
    }
}
