namespace JarLabel.Core.Reading;

/// <summary>The members of one JSON object, taken by name. A fault is noted and a harmless stand-in returned, so that the rest of
/// the file is still read; the caller drops the result when any problem was noted.</summary>
public sealed class FieldReader
{
    private readonly JsonElement element;
    private readonly string code;
    private readonly List<Problem> problems;
    private readonly List<string> taken = new(8);
    private List<string>? left;
    private readonly bool isObject;
    private int known;

    internal FieldReader(JsonElement element, string where, string code, List<Problem> problems)
    {
        this.element = element;
        this.code = code;
        this.problems = problems;
        Where = where;
        isObject = element.ValueKind == JsonValueKind.Object;
        if (!isObject)
        {
            problems.Add(ReadingProblems.WrongKind(code, where, element, "an object { ... }"));
        }
    }

    /// <summary>The place of this object: <c>file#/path</c>.</summary>
    public string Where { get; }

    /// <summary>True when the object has the member.</summary>
    public bool Has(string name)
    {
        var has = isObject && element.TryGetProperty(name, out _);
        if (!has)
        {
            (left ??= []).Add(name);
        }

        return has;
    }

    /// <summary>Notes a problem of the caller's own about one member.</summary>
    public void Refuse(string name, Message message) => problems.Add(new Problem(code, message, $"{Where}/{name}"));

    /// <summary>A text that is not empty.</summary>
    public string Text(string name) => Take(name, JsonValueKind.String, "a text in quotes") is { } found ? NotEmpty(name, found.GetString()!) : "";

    /// <summary>A text, or null when the member is left out.</summary>
    public string? OptionalText(string name) => Has(name) ? Text(name) : null;

    /// <summary>A number within its limits, both allowed.</summary>
    public double Number(string name, double least, double most) => (double)Exact(name, (decimal)least, (decimal)most);

    /// <summary>A number within its limits, or null when the member is left out.</summary>
    public double? OptionalNumber(string name, double least, double most) => Has(name) ? Number(name, least, most) : null;

    /// <summary>A number kept exactly as written, within its limits.</summary>
    public decimal Exact(string name, decimal least, decimal most)
    {
        if (Take(name, JsonValueKind.Number, "a number") is not { } found)
        {
            return least;
        }

        if (found.TryGetDecimal(out var value) && value >= least && value <= most)
        {
            return value;
        }

        problems.Add(ReadingProblems.OutOfRange(code, $"{Where}/{name}", found, least, most));
        return least;
    }

    /// <summary>A whole number within its limits.</summary>
    public int Count(string name, int least, int most)
    {
        var value = Exact(name, least, most);
        if (value != decimal.Truncate(value))
        {
            problems.Add(ReadingProblems.NotWhole(code, $"{Where}/{name}", value));
        }

        return (int)value;
    }

    /// <summary>A list of numbers, each within its limits.</summary>
    public IReadOnlyList<double> Numbers(string name, double least, double most)
    {
        if (Take(name, JsonValueKind.Array, "a list [ ... ]") is not { } found)
        {
            return [];
        }

        var numbers = new List<double>();
        var index = -1;
        foreach (var item in found.EnumerateArray())
        {
            index++;
            if (item.ValueKind == JsonValueKind.Number && item.TryGetDouble(out var value) && value >= least && value <= most)
            {
                numbers.Add(value);
                continue;
            }

            problems.Add(ReadingProblems.OutOfRange(code, $"{Where}/{name}/{index}", item, (decimal)least, (decimal)most));
        }

        return numbers;
    }

    /// <summary><c>true</c> or <c>false</c>.</summary>
    public bool Flag(string name)
    {
        if (Find(name) is not { } found)
        {
            return false;
        }

        if (found.ValueKind is not (JsonValueKind.True or JsonValueKind.False))
        {
            problems.Add(ReadingProblems.WrongKind(code, $"{Where}/{name}", found, "true or false"));
        }

        return found.ValueKind == JsonValueKind.True;
    }

    /// <summary>One of a few words.</summary>
    public T Choice<T>(string name, IReadOnlyDictionary<string, T> choices)
    {
        var word = Text(name);
        if (choices.TryGetValue(word, out var value))
        {
            return value;
        }

        if (word.Length > 0)
        {
            problems.Add(ReadingProblems.NotAChoice(code, $"{Where}/{name}", word, choices.Keys));
        }

        return choices.Values.First();
    }

    /// <summary>One object inside this one.</summary>
    public T Member<T>(string name, Func<FieldReader, T> read)
    {
        var inner = new FieldReader(Find(name) ?? EmptyObject, $"{Where}/{name}", code, problems);
        var value = read(inner);
        inner.RefuseUnknown();
        return value;
    }

    /// <summary>One object inside this one, unread: its text exactly as written.</summary>
    public string Verbatim(string name) => Take(name, JsonValueKind.Object, "an object { ... }") is { } found ? found.GetRawText() : "{}";

    /// <summary>One object inside this one, or null when the member is left out.</summary>
    public T? OptionalMember<T>(string name, Func<FieldReader, T> read)
        where T : class => Has(name) ? Member(name, read) : null;

    /// <summary>A list of objects.</summary>
    public IReadOnlyList<T> List<T>(string name, Func<FieldReader, T> read) =>
        Find(name) is { } found ? ReadItems(found, $"{Where}/{name}", code, problems, read) : [];

    /// <summary>A list of texts.</summary>
    public IReadOnlyList<string> Texts(string name)
    {
        if (Take(name, JsonValueKind.Array, "a list [ ... ]") is not { } found)
        {
            return [];
        }

        var texts = new List<string>();
        var index = -1;
        foreach (var item in found.EnumerateArray())
        {
            index++;
            if (item.ValueKind != JsonValueKind.String)
            {
                problems.Add(ReadingProblems.WrongKind(code, $"{Where}/{name}/{index}", item, "a text in quotes"));
                continue;
            }

            texts.Add(NotEmpty(name, item.GetString()!, index));
        }

        return texts;
    }

    internal static IReadOnlyList<T> ReadItems<T>(JsonElement list, string where, string code, List<Problem> problems, Func<FieldReader, T> read)
    {
        if (list.ValueKind != JsonValueKind.Array)
        {
            problems.Add(ReadingProblems.WrongKind(code, where, list, "a list [ ... ]"));
            return [];
        }

        var items = new List<T>(list.GetArrayLength());
        foreach (var item in list.EnumerateArray())
        {
            var fields = new FieldReader(item, $"{where}/{items.Count}", code, problems);
            items.Add(read(fields));
            fields.RefuseUnknown();
        }

        return items;
    }

    internal void RefuseUnknown()
    {
        if (!isObject || known == element.GetPropertyCount())
        {
            return;
        }

        foreach (var member in element.EnumerateObject().Where(m => !taken.Contains(m.Name)))
        {
            problems.Add(ReadingProblems.Unknown(code, $"{Where}/{member.Name}", member.Name, taken.Union(left ?? [])));
        }
    }

    private static JsonElement EmptyObject { get; } = JsonElement.Parse("{}");

    private JsonElement? Take(string name, JsonValueKind kind, string wanted)
    {
        if (Find(name) is not { } found)
        {
            return null;
        }

        if (found.ValueKind == kind)
        {
            return found;
        }

        problems.Add(ReadingProblems.WrongKind(code, $"{Where}/{name}", found, wanted));
        return null;
    }

    private JsonElement? Find(string name)
    {
        var first = !taken.Contains(name);
        if (first)
        {
            taken.Add(name);
        }

        if (!isObject)
        {
            return null;
        }

        if (element.TryGetProperty(name, out var found))
        {
            known += first ? 1 : 0;
            return found;
        }

        problems.Add(ReadingProblems.Missing(code, Where, name));
        return null;
    }

    private string NotEmpty(string name, string text, int? index = null)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            problems.Add(ReadingProblems.Empty(code, index is null ? $"{Where}/{name}" : $"{Where}/{name}/{index}"));
        }

        return text;
    }
}
