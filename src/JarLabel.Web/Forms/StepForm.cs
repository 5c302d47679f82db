namespace JarLabel.Web.Forms;

/// <summary>A declared step as a form: its fields in words, what may be chosen, its problems in the page's own spelling.</summary>
/// <param name="Step">The step.</param>
internal sealed record StepForm(Step Step)
{
    private readonly PageSpelling spelling = new(Step);

    /// <summary>Its name in an address: <c>bag/add</c>.</summary>
    internal string Name { get; } = NameOf(Step.Verb);

    /// <summary>The name that the form of a step has in an address.</summary>
    internal static string NameOf(string verb) => verb.Replace(' ', '/');

    /// <summary>The fields as they stand in the form; those with nothing to choose are left out.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="jar">The jar; null where the step is of none.</param>
    internal IReadOnlyList<FormField> Fields(Workbench bench, Jar? jar) =>
        [.. Step.Fields.Where(one => !one.IsSubject && !one.IsTypedOnly).Select(one => Shown(one, bench, jar)).OfType<FormField>()];

    /// <summary>Does the step.</summary>
    internal Result<Outcome> Do(Workbench bench, JarNumber jar, FormValues entry)
    {
        if (!Step.Do(bench, new Filled(Step, entry, jar)).TryGet(out var outcome, out var faults))
        {
            return Result<Outcome>.Failed(spelling.Of(faults));
        }

        return outcome.As(spelling.Of);
    }

    /// <summary>The printer that what it writes is to go to; null for none, or when no label is wanted.</summary>
    internal PrintRequest? Printing(Workbench bench, JarNumber jar, FormValues entry) =>
        entry.Ticked("no-label") ? null : Step.Printing(bench, new Filled(Step, entry, jar));

    private static FormField? Shown(Field one, Workbench bench, Jar? jar)
    {
        var choices = one.Choices?.Invoke(bench);
        return choices is { Count: 0 } ? null : new FormField(one.Name, one.Label, one.Hint ?? (choices is null && !one.IsFlag ? one.Example : null))
        {
            Choices = choices,
            First = jar is null ? null : one.First?.Invoke(jar),
            Tick = one.IsFlag,
            Seldom = one.IsMore,
        };
    }

    /// <summary>What was filled in; the jar is the one whose page it is.</summary>
    private sealed class Filled(Step step, FormValues entry, JarNumber jar) : IValueSource
    {
        public IReadOnlyList<string> Texts(string name)
        {
            var one = step.Fields.FirstOrDefault(known => known.Name == name);
            return one is { IsSubject: true } ? [$"{jar}"]
                : one is null or { IsTypedOnly: true } || entry.Text(name) is not { } text ? []
                : one.IsMany ? text.Split([';', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
                : [text];
        }

        public Problem Missing(Field field) => TypingProblems.Empty(field.Name, field.Label, field.Example);
    }
}

/// <summary>One thing to fill in.</summary>
/// <param name="Name">The identity of what it holds: <c>cut</c>.</param>
/// <param name="Label">What it is called here.</param>
/// <param name="Hint">What may be written, with an example.</param>
internal sealed record FormField(string Name, string Label, string? Hint = null)
{
    /// <summary>What can be chosen, each with its words; null for a line of text.</summary>
    internal IReadOnlyList<(string Value, string Words)>? Choices { get; init; }

    /// <summary>What stands in it at first.</summary>
    internal string? First { get; init; }

    /// <summary>True for a box to tick.</summary>
    internal bool Tick { get; init; }

    /// <summary>True for what is seldom needed and is folded away.</summary>
    internal bool Seldom { get; init; }
}
