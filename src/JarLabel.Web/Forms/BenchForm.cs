using JarLabel.Bench;
using JarLabel.Bench.Printing;
using JarLabel.Bench.Steps;
using JarLabel.Bench.Typing;
using JarLabel.Core;
using JarLabel.Core.Jars;

namespace JarLabel.Web.Forms;

/// <summary>A declared step as a form: its fields in words, what may be chosen, its problems in the page's own spelling.</summary>
/// <param name="Step">The step.</param>
internal sealed record BenchForm(Step Step)
{
    private readonly PageSpelling spelling = new(Step);

    /// <summary>Its name in an address: <c>bag/add</c>.</summary>
    internal string Name { get; } = Step.Verb.Replace(' ', '/');

    /// <summary>The fields as they stand in the form; those with nothing to choose are left out.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="jar">The jar; null where the step is of none.</param>
    internal IReadOnlyList<Field> Fields(Workbench bench, Jar? jar) =>
        [.. Step.Fields.Where(one => !one.IsSubject && !one.IsTypedOnly).Select(one => Shown(one, bench, jar)).OfType<Field>()];

    /// <summary>Does the step.</summary>
    internal Result<Outcome> Do(Workbench bench, JarNumber jar, Entry entry)
    {
        if (!Step.Do(bench, new Filled(Step, entry, jar)).TryGet(out var outcome, out var faults))
        {
            return Result<Outcome>.Failed(spelling.Of(faults));
        }

        return outcome.As(spelling.Of);
    }

    /// <summary>The printer that what it writes is to go to; null for none, or when no label is wanted.</summary>
    internal PrintRequest? Printing(Workbench bench, JarNumber jar, Entry entry) =>
        entry.Ticked("no-label") ? null : Step.Printing(bench, new Filled(Step, entry, jar));

    private static Field? Shown(Bench.Steps.Field one, Workbench bench, Jar? jar)
    {
        var choices = one.Choices?.Invoke(bench);
        return choices is { Count: 0 } ? null : new Field(one.Name, one.Label, one.Hint ?? (choices is null && !one.IsFlag ? one.Example : null))
        {
            Choices = choices,
            First = jar is null ? null : one.First?.Invoke(jar),
            Tick = one.IsFlag,
            Seldom = one.IsMore,
        };
    }

    /// <summary>What was filled in; the jar is the one whose page it is.</summary>
    private sealed class Filled(Step step, Entry entry, JarNumber jar) : IValueSource
    {
        public IReadOnlyList<string> Texts(string name)
        {
            var one = step.Fields.FirstOrDefault(known => known.Name == name);
            return one is { IsSubject: true } ? [$"{jar}"]
                : one is null or { IsTypedOnly: true } || entry.Text(name) is not { } text ? []
                : one.IsMany ? text.Split([';', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
                : [text];
        }

        public Problem Missing(Bench.Steps.Field field) => TypingProblems.Empty(field.Name, field.Label, field.Example);
    }
}
