using System.Text.RegularExpressions;

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
    /// <param name="entry">What is filled in.</param>
    internal IReadOnlyList<FormField> Fields(Workbench bench, Jar? jar, FormValues entry) =>
        [.. Open.Select(one => Shown(one, bench, jar, entry)).OfType<FormField>(), .. Step.Looks || Step.Fields.Any(one => one.Name == At.Name) ? [] : (FormField[])[At with { Value = entry.Text(At.Name) }]];

    /// <summary>When it was done, for every step that records.</summary>
    internal static FormField At { get; } = new("at", "When, if not now", "yesterday, 2026-03-09, or 2026-03-09 14:30") { Seldom = true };

    /// <summary>What stands against the step whatever else is filled in; then there is nothing to send.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="jar">The jar; null where the step is of none.</param>
    /// <param name="entry">What is filled in.</param>
    internal IReadOnlyList<Problem> Hindered(Workbench bench, Jar? jar, FormValues entry) => jar is not null && !Step.TakesGone && !jar.DemandOnShelf().TryGet(out _, out var gone) ? spelling.Of([.. gone]) : spelling.Of(
        [.. Step.Hinders(new Values(bench, new Filled(this, entry, jar?.Number ?? default))), .. Open.Where(one => one is { IsNeeded: true, WhenNone: not null } && one.Choices?.Invoke(bench) is { Count: 0 }).Select(one => TypingProblems.NothingToChoose(one.Name, one.Label, one.WhenNone!))]);

    private IEnumerable<Field> Open => Step.Fields.Where(one => !one.IsSubject && !one.IsTypedOnly);

    /// <summary>Does the step.</summary>
    internal Result<Outcome> Do(Workbench bench, JarNumber jar, FormValues entry)
    {
        if (!Step.Do(bench, new Filled(this, entry, jar)).TryGet(out var outcome, out var faults))
        {
            return Result<Outcome>.Failed(spelling.Of(faults));
        }

        return outcome.As(spelling.Of);
    }

    /// <summary>What is wrong with its fields; nothing is done.</summary>
    internal IReadOnlyList<Problem> Faults(Workbench bench, JarNumber jar, FormValues entry) => spelling.Of(Step.Faults(bench, new Filled(this, entry, jar)));

    /// <summary>The printer that what it writes is to go to; null for none, or when no label is wanted.</summary>
    internal PrintRequest? Printing(Workbench bench, JarNumber jar, FormValues entry) =>
        entry.Ticked("no-label") ? null : Step.Printing(bench, new Filled(this, entry, jar));

    /// <summary>The name under which a form says what stood in a field of something settled when it was opened.</summary>
    private static string Was(string name) => $"was.{name}";

    /// <summary>The name under which it is sent which of several things somebody knows.</summary>
    internal const string Knows = "known";

    /// <summary>Which of the things that one may know is asked for: the one that was chosen, or whose fields are filled in; else the first. Null where what is filled in
    /// is none of them, and where nothing is to choose.</summary>
    internal KnownFields? Known(FormValues entry)
    {
        var filled = Step.Known.SelectMany(one => one.Names).Where(name => entry.Text(name) is not null).ToHashSet();
        return Step.Known.FirstOrDefault(one => one.Value == entry.Text(Knows))
            ?? (filled.Count > 0 ? Step.Known.FirstOrDefault(one => filled.SetEquals(one.Names)) : Step.Known is [var first, ..] ? first : null);
    }

    /// <summary>False for a field that is no part of what somebody said to know, and filled in.</summary>
    private bool Counts(string name, FormValues entry) =>
        Step.Known.FirstOrDefault(one => one.Value == entry.Text(Knows)) is not { } said || said.All.Contains(name)
        || !Step.Known.Any(one => one.All.Contains(name)) || said.Names.All(other => entry.Text(other) is null);

    private static FormField? Shown(Field one, Workbench bench, Jar? jar, FormValues entry)
    {
        var first = one.Settled?.Invoke(bench) ?? (jar is null ? null : one.First?.Invoke(jar));
        var given = entry.Text(one.Name) ?? (one is { Settled: not null, Choices: null } && entry.Sent(one.Name) ? "" : null);
        var choices = one.Choices is null ? null : Offered(one, bench, given ?? first);
        var units = one.Units?.Invoke(bench);
        return choices is { Count: 0 } ? null : new FormField(one.Name, one.Label, Hint(one, units, one.Hint ?? (choices is null && !one.IsFlag ? one.Example : null)))
        {
            Choices = choices,
            First = first ?? choices?[0].Value,
            Units = units,
            Unit = entry.Text(FormField.UnitOf(one.Name)),
            Value = choices is null ? given ?? first : Same(one, bench, choices, given ?? first) ?? choices[0].Value,
            Usual = one.Usual(bench),
            Was = one.Settled is null ? null : (Was(one.Name), entry.Sent(Was(one.Name)) ? entry.Text(Was(one.Name)) ?? "" : first ?? ""),
            Large = one is { Choices: not null } and ({ IsObserved: true } or { IsTapped: true }),
            Beside = one.IsTapped,
            Lines = one is { IsMany: true, Settled: not null },
            Tick = one.IsFlag,
            Seldom = one.IsMore,
        };
    }

    /// <summary>What is said of a field; nothing where that is only how an amount is written, and its unit stands beside it.</summary>
    private static string? Hint(Field one, IReadOnlyList<(string Value, string Words)>? units, string? hint) =>
        units is not null && hint?.Split(", ").All(part => FormField.IsAmount(part, units)) == true ? null : hint;

    /// <summary>What may be chosen. Where something must be, nothing is at first; and what was given stands there as it is where it is not among
    /// the others, so that none of them is chosen in its place.</summary>
    private static IReadOnlyList<(string Value, string Words)> Offered(Field one, Workbench bench, string? given)
    {
        var rows = one.Choices!(bench);
        (string, string)[] other = given is null || Same(one, bench, rows, given) is not null ? [] : [(given, one.TakesOther?.Invoke(given) == true ? given : $"{given}: not among these")];
        (string, string)[] none = rows.Any(row => row.Value.Length == 0) ? []
            : one is { IsNeeded: true, First: null } && (rows.Count > 1 || one.WhenNone is not null) && rows.Count > 0 ? [("", "choose")]
            : rows.Count == 0 && other.Length > 0 ? [("", "none")]
            : [];
        return [.. none, .. rows, .. other];
    }

    /// <summary>The choice that means the same as a text; null for none.</summary>
    private static string? Same(Field one, Workbench bench, IReadOnlyList<(string Value, string Words)> choices, string? text)
    {
        if (text is null || choices.Any(choice => choice.Value == text))
        {
            return text;
        }

        var meant = one.Reads(bench, text);
        return meant is null ? null : choices.Select(choice => choice.Value).FirstOrDefault(value => value.Length > 0 && meant.Equals(one.Reads(bench, value)));
    }

    /// <summary>What was filled in; the jar is the one whose page it is.</summary>
    private sealed class Filled(StepForm form, FormValues entry, JarNumber jar) : IValueSource
    {
        public IReadOnlyList<string> Texts(string name)
        {
            var one = form.Step.Fields.FirstOrDefault(known => known.Name == name);
            return one is { IsSubject: true } ? [$"{jar}"]
                : one is null or { IsTypedOnly: true } || entry.Text(name) is not { } text || !form.Counts(name, entry) || IsAsItWas(one, text) ? []
                : one.IsMany ? Lines(text)
                : [InUnit(one, text)];
        }

        public bool IsEmptied(string name) => entry.Sent(name) && entry.Text(name) is null && entry.Text(Was(name)) is not null;

        public IReadOnlyList<string>? Shown(string name) => entry.Sent(Was(name)) ? Lines(entry.Text(Was(name)) ?? "") : null;

        /// <summary>What is settled and stands there as it did is left as it is, whatever somebody else has settled meanwhile.</summary>
        private bool IsAsItWas(Field one, string text) => one.Settled is not null && entry.Text(Was(one.Name)) is { } was && (one.IsMany ? Lines(text).SequenceEqual(Lines(was)) : text == was);

        private static string[] Lines(string text) => text.Split([';', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

        /// <summary>A bare figure in the unit that was tapped beside it; what says its own unit, or means something without one, stays as it is.</summary>
        private string InUnit(Field one, string text) =>
            one.Units is not null && entry.Text(FormField.UnitOf(one.Name)) is { } unit && FormField.IsFigure(text) && one.Takes?.Invoke(text) != true ? $"{text} {unit}" : text;

        public Problem Missing(Field field) => TypingProblems.Empty(field.Name, field.Label, field.Example);
    }
}

/// <summary>One thing to fill in.</summary>
/// <param name="Name">The identity of what it holds: <c>cut</c>.</param>
/// <param name="Label">What it is called here.</param>
/// <param name="Hint">What may be written, with an example.</param>
internal sealed partial record FormField(string Name, string Label, string? Hint = null)
{
    /// <summary>The name under which the unit of an amount is sent.</summary>
    internal static string UnitOf(string name) => name + "-unit";

    /// <summary>True for a figure without a unit: <c>350</c>, <c>1 1/2</c>.</summary>
    internal static bool IsFigure(string text) => Figure().IsMatch(text);

    [GeneratedRegex("^[0-9.,/ \u00bc-\u00be\u2150-\u215e]*[0-9\u00bc-\u00be\u2150-\u215e][0-9.,/ ]*$")]
    private static partial Regex Figure();

    /// <summary>Units to tap beside the figure, the usual one first; null where it is no amount.</summary>
    internal IReadOnlyList<(string Value, string Words)>? Units { get; init; }

    /// <summary>The unit that was sent beside it; null for none.</summary>
    internal string? Unit { get; init; }

    /// <summary>The figure and the unit as they stand in the form: an amount in one of the units is parted, anything else stays whole.</summary>
    internal (string Figure, string Unit) Parted(string text) => Amount(text, Units!) ?? (text, Units!.Any(one => one.Value == Unit) ? Unit! : Units![0].Value);

    /// <summary>True for a figure with one of the units.</summary>
    internal static bool IsAmount(string text, IReadOnlyList<(string Value, string Words)> units) => Amount(text, units) is not null;

    private static (string Figure, string Unit)? Amount(string text, IReadOnlyList<(string Value, string Words)> units)
    {
        foreach (var (unit, _) in units.OrderByDescending(one => one.Value.Length))
        {
            if (text.EndsWith(unit, StringComparison.OrdinalIgnoreCase) && text[..^unit.Length].TrimEnd() is var figure && IsFigure(figure))
            {
                return (figure, unit);
            }
        }

        return null;
    }

    /// <summary>What can be chosen, each with its words; null for a line of text.</summary>
    internal IReadOnlyList<(string Value, string Words)>? Choices { get; init; }

    /// <summary>What stands in it at first.</summary>
    internal string? First { get; init; }

    /// <summary>What stands in it now.</summary>
    internal string? Value { get; init; }

    /// <summary>What stood in it when the form was opened and under which name the form says so, where that is something settled; else null.</summary>
    internal (string Name, string Value)? Was { get; init; }

    /// <summary>True where its buttons stand side by side.</summary>
    internal bool Beside { get; init; }

    /// <summary>True for several lines.</summary>
    internal bool Lines { get; init; }

    /// <summary>Usual values to tap.</summary>
    internal IReadOnlyList<(string Value, string Words)> Usual { get; init; } = [];

    /// <summary>True for a finding that is tapped as one of a few large buttons.</summary>
    internal bool Large { get; init; }

    /// <summary>True for a box to tick.</summary>
    internal bool Tick { get; init; }

    /// <summary>True for what is seldom needed and is folded away.</summary>
    internal bool Seldom { get; init; }
}
