using JarLabel.Bench;
using JarLabel.Bench.Steps;
using JarLabel.Bench.Typing;
using JarLabel.Core;
using JarLabel.Core.Jars;

namespace JarLabel.Web.Forms;

/// <summary>A declared step as a form: its fields in words, what may be chosen, its problems in the page's own spelling.</summary>
internal static class StepForm
{
    /// <summary>The form.</summary>
    internal static BenchForm Of(Step step) => new(
        step.Verb,
        step.Title,
        step.Button,
        (bench, jar) => [.. step.Fields.Where(one => !one.IsSubject && !one.IsTypedOnly).Select(one => Shown(one, bench, jar)).OfType<Field>()],
        (bench, jar, entry) => Do(step, bench, jar, entry))
    {
        Says = step.Says,
        WorksOut = step.WorksOut,
        NeedsNothing = step.NeedsNothing,
    };

    private static Result<BenchOutcome> Do(Step step, Workbench bench, JarNumber jar, Entry entry)
    {
        var spelling = new PageSpelling(step);
        return step.Do(bench, new Filled(step, entry, jar)).TryGet(out var outcome, out var faults)
            ? outcome
            : Result<BenchOutcome>.Failed([.. faults.Select(fault => fault.In(spelling, where => where))]);
    }

    /// <summary>The field as it stands in the form; null where there is nothing to choose.</summary>
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
        public string? Text(string name) => step.Fields.Any(one => one.IsSubject && one.Name == name) ? $"{jar}" : entry.Text(name);

        public Problem Missing(Bench.Steps.Field field) => TypingProblems.Empty(field.Name, field.Label, field.Example);
    }

    /// <summary>Names as a page writes them: the words beside the field, the title of the step.</summary>
    private sealed class PageSpelling(Step step) : ISpelling
    {
        public string Write(InputName input)
        {
            var label = step.Fields.FirstOrDefault(one => one.Name == input.Name)?.Label ?? input.Name;
            return input.Value is null ? $"“{label}”" : $"“{label}” {input.Value}";
        }

        public string Write(Remedy remedy) => $"“{StepTable.Find(remedy.Verb)?.Title ?? remedy.Verb}”";
    }
}
