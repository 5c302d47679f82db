namespace JarLabel.Operations.Steps;

/// <summary>Reads a value out of what was filled in; false when a fault was noted.</summary>
/// <param name="values">What was filled in.</param>
/// <param name="one">The input's first field as it is declared now, whatever was changed of it since.</param>
/// <param name="value">The value.</param>
internal delegate bool TryRead<T>(Values values, Field one, out T value);

/// <summary>Reads one text.</summary>
/// <param name="text">What was filled in.</param>
/// <param name="where">The input's identity, for its problems.</param>
internal delegate Result<T> Reader<T>(string text, string where)
    where T : notnull;

/// <summary>Reads one text with the shop at hand.</summary>
/// <param name="bench">The shop.</param>
/// <param name="text">What was filled in.</param>
/// <param name="where">The input's identity, for its problems.</param>
internal delegate Result<T> ShopReader<T>(Workbench bench, string text, string where)
    where T : notnull;

/// <summary>What a step wants to know: one field, or a few that mean one thing.</summary>
internal abstract class Input
{
    /// <summary>The fields it is read from.</summary>
    internal required IReadOnlyList<Field> Fields { get; init; }

    /// <summary>The one field of an input that has one.</summary>
    internal Field Field => Fields[0];

    /// <summary>Reads it and notes its faults; false when there were some.</summary>
    internal abstract bool ReadInto(Values values);

    /// <summary>One field that must be filled in.</summary>
    internal static Input<T> Of<T>(string name, string label, string example, Reader<T> read)
        where T : notnull => Of<T>(name, label, example, (_, text, where) => read(text, where)).Change(one => one with { Takes = text => read(text, name).Ok });

    /// <summary>One field that must be filled in, whose reader needs the shop.</summary>
    internal static Input<T> Of<T>(string name, string label, string example, ShopReader<T> read)
        where T : notnull => new()
        {
            Fields = [new Field(name, label, example) { IsNeeded = true, Reads = Meaning(name, read) }],
            TryRead = (values, one, out value) =>
            {
                value = default!;
                return values.Text(one.Name) is not { } text ? values.Miss(one) : values.Take(read(values.Bench, text, one.Name), out value);
            },
        };

    /// <summary>One field that may stay empty.</summary>
    internal static Input<T?> Optional<T>(string name, string label, string example, ShopReader<T> read, T? none = null)
        where T : class => new()
        {
            Fields = [new Field(name, label, example) { Reads = Meaning(name, read) }],
            TryRead = (values, _, out value) =>
            {
                value = none;
                return values.Text(name) is not { } text || (values.Take(read(values.Bench, text, name), out var found) && Kept(found, out value));
            },
        };

    /// <summary>One field that may stay empty.</summary>
    internal static Input<T?> Optional<T>(string name, string label, string example, Reader<T> read, T? none = null)
        where T : class => Optional(name, label, example, (_, text, where) => read(text, where), none).Change(one => one with { Takes = text => read(text, name).Ok });

    /// <summary>One field that may stay empty.</summary>
    internal static Input<T?> Optional<T>(string name, string label, string example, ShopReader<T> read, T? none = null)
        where T : struct => new()
        {
            Fields = [new Field(name, label, example) { Reads = Meaning(name, read) }],
            TryRead = (values, _, out value) =>
            {
                value = none;
                if (values.Text(name) is not { } text)
                {
                    return true;
                }

                var ok = values.Take(read(values.Bench, text, name), out var found);
                value = ok ? found : none;
                return ok;
            },
        };

    /// <summary>One field that may stay empty.</summary>
    internal static Input<T?> Optional<T>(string name, string label, string example, Reader<T> read, T? none = null)
        where T : struct => Optional(name, label, example, (_, text, where) => read(text, where), none).Change(one => one with { Takes = text => read(text, name).Ok });

    /// <summary>One field that stands for something when it is empty.</summary>
    internal static Input<T> Or<T>(string name, string label, string example, Reader<T> read, T usual)
        where T : struct => new()
        {
            Fields = [new Field(name, label, example)],
            TryRead = (values, _, out value) =>
            {
                value = usual;
                return values.Text(name) is not { } text || values.Take(read(text, name), out value);
            },
        };

    /// <summary>A word that needs no reading and may stay out.</summary>
    internal static Input<string?> Word(string name, string label, string example) =>
        Optional<string>(name, label, example, (_, text, _) => Result<string>.Of(text));

    /// <summary>Yes or no.</summary>
    internal static Input<bool> Flag(string name, string label) => new()
    {
        Fields = [new Field(name, label, "") { IsFlag = true }],
        TryRead = (values, _, out value) =>
        {
            value = values.Text(name) is not null;
            return true;
        },
    };

    /// <summary>One field that takes several values, or none.</summary>
    internal static Input<IReadOnlyList<T>> Many<T>(string name, string label, string example, ShopReader<T> read)
        where T : notnull => new()
        {
            Fields = [new Field(name, label, example) { IsMany = true }],
            TryRead = (values, _, out value) =>
            {
                var found = new List<T>();
                var ok = true;
                foreach (var text in values.Texts(name))
                {
                    if (values.Take(read(values.Bench, text, name), out var one))
                    {
                        found.Add(one);
                    }
                    else
                    {
                        ok = false;
                    }
                }

                value = found;
                return ok;
            },
        };

    /// <summary>One field that takes several values, and at least one.</summary>
    internal static Input<IReadOnlyList<T>> Some<T>(string name, string label, string example, ShopReader<T> read)
        where T : notnull
    {
        var many = Many(name, label, example, read).Change(one => one with { IsNeeded = true });
        return new()
        {
            Fields = many.Fields,
            TryRead = (values, one, out value) =>
            {
                value = [];
                return values.Texts(name).Count == 0 ? values.Miss(one) : many.TryRead(values, one, out value);
            },
        };
    }

    /// <summary>A few inputs that mean one thing.</summary>
    internal static Input<T> Group<T>(IReadOnlyList<Input> parts, Func<Values, Result<T>> make)
        where T : notnull => new()
        {
            Fields = [.. parts.SelectMany(part => part.Fields).DistinctBy(one => one.Name)],
            TryRead = (values, _, out value) =>
            {
                value = default!;
                return values.ReadAll(parts) && values.Take(make(values), out value);
            },
        };

    /// <summary>A few inputs that mean one thing, or nothing.</summary>
    internal static Input<T?> OptionalGroup<T>(IReadOnlyList<Input> parts, Func<Values, T?> make)
        where T : class => new()
        {
            Fields = [.. parts.SelectMany(part => part.Fields).DistinctBy(one => one.Name)],
            TryRead = (values, _, out value) =>
            {
                var ok = values.ReadAll(parts);
                value = ok ? make(values) : null;
                return ok;
            },
        };

    private static Func<Workbench, string, object?> Meaning<T>(string name, ShopReader<T> read)
        where T : notnull => (bench, text) => read(bench, text, name).TryGet(out var found, out _) ? found : null;

    private static bool Kept<T>(T found, out T kept)
    {
        kept = found;
        return true;
    }
}

/// <summary>What a step wants to know, as a value of this type.</summary>
internal sealed class Input<T> : Input
{
    /// <summary>Reads it.</summary>
    internal required TryRead<T> TryRead { get; init; }

    internal override bool ReadInto(Values values) => values.TryRead(this, out _);

    /// <summary>With a line of help, and the kind of word that it takes.</summary>
    internal Input<T> Help(string kind, string help) => Change(one => one with { Kind = kind, Help = help });

    /// <summary>With a line of help, for a flag.</summary>
    internal Input<T> Help(string help) => Change(one => one with { Help = help });

    /// <summary>With another hint than its example.</summary>
    internal Input<T> Hint(string hint) => Change(one => one with { Hint = hint });

    /// <summary>Seldom needed.</summary>
    internal Input<T> More() => Change(one => one with { IsMore = true });

    /// <summary>Stands on the command line without an option.</summary>
    internal Input<T> Argument() => Change(one => one with { IsArgument = true });

    /// <summary>May stand on the command line without its option.</summary>
    internal Input<T> Alone() => Change(one => one with { MayStandAlone = true });

    /// <summary>Seen or measured at the bench.</summary>
    internal Input<T> Observed() => Change(one => one with { IsObserved = true });

    /// <summary>Tapped as one of a few large buttons.</summary>
    internal Input<T> Tapped() => Change(one => one with { IsTapped = true });

    /// <summary>Chosen among a few.</summary>
    internal Input<T> Choices(Func<Workbench, IReadOnlyList<(string Value, string Words)>> choices) => Change(one => one with { Choices = choices });

    /// <summary>With usual values to tap.</summary>
    internal Input<T> Usual(Func<Workbench, IReadOnlyList<(string Value, string Words)>> usual) => Change(one => one with { Usual = usual });

    /// <summary>An amount whose unit is tapped.</summary>
    internal Input<T> In(Func<Workbench, IReadOnlyList<(string Value, string Words)>> units) => Change(one => one with { Units = units });

    /// <summary>The same input with its field changed. It is another input: keep it in a property of its own.</summary>
    internal Input<T> Change(Func<Field, Field> change) => new() { Fields = [change(Field), .. Fields.Skip(1)], TryRead = TryRead };
}
