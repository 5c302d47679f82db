namespace JarLabel.Operations.Steps;

/// <summary>Something that is done at the bench, declared once: the command with its help, the form with its live result and the columns of a
/// list are drawn from it.</summary>
/// <param name="Verb">Its name on the command line, and in the page's address: <c>thin</c>.</param>
/// <param name="Title">What it is called on a page: <c>Thin</c>.</param>
/// <param name="Help">What it does, in one line.</param>
/// <param name="Inputs">What it wants to know.</param>
/// <param name="Does">Does it; called only when every input could be read.</param>
internal sealed record Step(string Verb, string Title, string Help, IReadOnlyList<Input> Inputs, Func<Values, Result<Outcome>> Does)
{
    /// <summary>What the button says.</summary>
    internal string Button { get; init; } = "Record it";

    /// <summary>A sentence above the form; null for none.</summary>
    internal string? Says { get; init; }

    /// <summary>True when what follows is worked out and shown while one types.</summary>
    internal bool WorksOut { get; init; }

    /// <summary>True when nothing need be filled in, so that it can be shown at once what it would do.</summary>
    internal bool NeedsNothing { get; init; }

    /// <summary>What somebody would fill in who does it for the first time.</summary>
    internal IReadOnlyList<InputName> Example
    {
        get => field ?? [.. Fields.Where(one => one.IsNeeded && !one.IsTypedOnly).Select(one => new InputName(one.Name, one.Example))];
        init;
    }

    /// <summary>True where its page can show at once what it comes to.</summary>
    internal bool ShowsAtOnce => NeedsNothing || (Looks && !Fields.Any(one => one.IsNeeded));

    /// <summary>What somebody may know, one of which is enough: a page asks which it is and shows its fields alone. Empty where every field is asked for.</summary>
    internal IReadOnlyList<KnownFields> Known { get; init; } = [];

    /// <summary>Everything to fill in, each once.</summary>
    internal IReadOnlyList<Field> Fields => fields ??= [.. Inputs.SelectMany(input => input.Fields).Concat(FieldsOfOther).DistinctBy(one => one.Name)];

    private IEnumerable<Field> FieldsOfOther => (Instead?.Step().Inputs ?? []).SelectMany(input => input.Fields).Select(one => one with { IsNeeded = false });

    private IReadOnlyList<Field>? fields;

    /// <summary>True for a step that records nothing.</summary>
    internal bool Looks { get; init; }

    /// <summary>True for what is final, takes back or is seldom wanted, and is folded away on the page of a jar.</summary>
    internal bool IsSeldom { get; init; }

    /// <summary>Whether a jar asks for it as it stands at a moment; then it comes first on the jar's page.</summary>
    internal Func<Jar, DateTime, bool> IsAskedFor { get; init; } = (_, _) => false;

    /// <summary>True for what can be done at a jar that is gone from its shelf.</summary>
    internal bool TakesGone { get; init; }

    /// <summary>True for what is done at the machine itself and has no page, because it names files there.</summary>
    internal bool IsTypedOnly { get; init; }

    /// <summary>The step whose page does the same better, so that no page leads here; null for none.</summary>
    internal string? OnPages { get; init; }

    /// <summary>True for what reads the shop's own settings, catalog and layouts itself and tells their faults: the shop is opened without them.</summary>
    internal bool ReadsShopFiles { get; init; }

    /// <summary>True for what finds by codes: on its page a photo of labels may be sent instead of what is typed.</summary>
    internal bool TakesPhoto { get; init; }

    /// <summary>What is wrong with what was filled in as a whole, told beside the faults of single fields.</summary>
    internal Func<Values, IEnumerable<Problem>>? Holds { get; init; }

    /// <summary>What stands against it at the jar, bag or bottle that it is of, whatever else is filled in: there is nothing to do it to.</summary>
    internal Func<Values, IEnumerable<Problem>> Hinders { get; init; } = _ => [];

    /// <summary>On what it prints; null for what is said in the fields for a label.</summary>
    internal Input<LabelChoice>? Stock { get; init; }

    /// <summary>Another step under the same name, done when a field of its own is filled in.</summary>
    internal OtherStep? Instead { get; init; }

    /// <summary>True for a step of one jar, which is done from its page.</summary>
    internal bool IsOfJar => Fields.Any(one => one.IsSubject);

    /// <summary>A step that changes one jar.</summary>
    internal static Step OnJar(string verb, string title, string help, IReadOnlyList<Input> inputs, Func<Values, Result<JarOutcome>> does) =>
        OfJar(verb, title, help, inputs, given => does(given).Then<Outcome>(outcome => Outcome.Changed(given.Bench, outcome)));

    /// <summary>A step of one jar that has an answer of its own.</summary>
    internal static Step OfJar(string verb, string title, string help, IReadOnlyList<Input> inputs, Func<Values, Result<Outcome>> does) =>
        new(verb, title, help, [Shared.Jar, .. inputs], does);

    /// <summary>A step of the shop.</summary>
    internal static Step OfShop(string verb, string title, string help, IReadOnlyList<Input> inputs, Func<Values, Result<Outcome>> does) =>
        new(verb, title, help, inputs, does);

    /// <summary>Reads every input, and does the step when nothing was wrong with any.</summary>
    internal Result<Outcome> Do(Workbench bench, IValueSource source)
    {
        var values = new Values(bench, source);
        if (Instead is { } other && source.Texts(other.When).Count > 0)
        {
            var step = other.Step();
            values.Refuse(Own(step).Where(name => source.Texts(name).Count > 0).Select(other.NotBeside));
            return step.Do(values);
        }

        if (Instead is { } wanting)
        {
            values.Refuse(wanting.Step().Own(this).Where(name => source.Texts(name).Count > 0).Select(wanting.OnlyWith));
        }

        return Do(values);
    }

    /// <summary>What is wrong with what was filled in, field by field; nothing is done.</summary>
    internal IReadOnlyList<Problem> Faults(Workbench bench, IValueSource source)
    {
        var values = new Values(bench, source);
        var step = Instead is { } other && source.Texts(other.When).Count > 0 ? other.Step() : this;
        values.ReadAll(step.Inputs);
        values.Refuse(step.Fields.Where(field => field.Stands is not null).SelectMany(field => source.Texts(field.Name).SelectMany(text => field.Stands!(bench, text))));
        values.Refuse(step.Hinders(values));
        return values.Problems;
    }

    /// <summary>The printer that what it writes is to go to, and on what it prints; null where none was named.</summary>
    internal PrintRequest? Printing(Workbench bench, IValueSource source)
    {
        if (source.Text(Shared.PrintTo.Field.Name) is not { } to)
        {
            return null;
        }

        var values = new Values(bench, source);
        var stock = Stock is { } input && values.TryRead(input, out var own) ? own : new LabelChoice(values.Text("design"), values.Text("sheet"));
        return new PrintRequest(to, stock.Sheet, stock.Design) { Where = Shared.PrintTo.Field.Name };
    }

    private Result<Outcome> Do(Values values)
    {
        values.ReadAll(Inputs);
        values.Refuse(Holds?.Invoke(values) ?? []);
        return values.Problems.Count == 0 ? Does(values) : Result<Outcome>.Failed(values.Problems);
    }

    /// <summary>The fields that it has and another has not.</summary>
    private IEnumerable<string> Own(Step other) =>
        Inputs.SelectMany(input => input.Fields).Select(one => one.Name).Distinct().Except(other.Inputs.SelectMany(input => input.Fields).Select(one => one.Name));

    /// <summary>The jar that a step of one jar acts on.</summary>
    internal static JarNumber Jar(Values given) => given.Get(Shared.Jar);
}

/// <summary>Another step under the same name: a list of batches beside a batch.</summary>
/// <param name="When">The field that calls for it.</param>
/// <param name="Step">The step.</param>
/// <param name="NotBeside">What to say of a field that only the first step has.</param>
/// <param name="OnlyWith">What to say of a field that only this one has, where nothing called for it.</param>
internal sealed record OtherStep(string When, Func<Step> Step, Func<string, Problem> NotBeside, Func<string, Problem> OnlyWith);

/// <summary>Something that one may know, of which one is enough.</summary>
/// <param name="Words">What it is called: <c>alcohol to pour</c>.</param>
/// <param name="Names">The fields that say it.</param>
internal sealed record KnownFields(string Words, params IReadOnlyList<string> Names)
{
    /// <summary>Fields that are asked for with them.</summary>
    internal IReadOnlyList<string> With { get; init; } = [];

    /// <summary>All its fields.</summary>
    internal IReadOnlyList<string> All => [.. With, .. Names];

    /// <summary>Its name among the others.</summary>
    internal string Value => string.Join(' ', All);
}
