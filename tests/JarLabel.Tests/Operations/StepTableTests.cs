namespace JarLabel.Tests.Operations;

/// <summary>What holds for every declared step, so that a new one is covered by being declared.</summary>
public class StepTableTests
{
    public static TheoryData<string> Verbs => [.. StepTable.All.Select(step => step.Verb)];

    /// <summary>Those that a page has too. The others name files of the machine, and are walked by the command line's tests.</summary>
    public static TheoryData<string> PageVerbs => [.. StepTable.All.Where(step => !step.IsTypedOnly).Select(step => step.Verb)];

    [Fact]
    public void A_verb_leads_to_its_step()
    {
        Assert.All(StepTable.All, step => Assert.Same(step, StepTable.Find(step.Verb)));
        Assert.Null(StepTable.Find("nothing of the kind"));
    }

    [Theory, MemberData(nameof(Verbs))]
    public void One_name_means_one_field_in_a_step(string verb)
    {
        var shapes = StepTable.Find(verb)!.Inputs.SelectMany(input => input.Fields).GroupBy(field => field.Name);
        Assert.All(shapes, same => Assert.Single(same.Distinct()));
    }

    [Theory, MemberData(nameof(Verbs))]
    public void Every_field_says_what_it_is(string verb) => Assert.All(StepTable.Find(verb)!.Fields, field =>
    {
        Assert.EndsWith(".", field.Help);
        Assert.False(string.IsNullOrWhiteSpace(field.Label), field.Name);
        Assert.DoesNotContain("--", field.Label + field.Hint);
        Assert.True(field.IsFlag || field.Example.Length > 0, field.Name);
    });

    [Theory, MemberData(nameof(Verbs))]
    public void Every_example_is_taken_by_its_own_reader(string verb)
    {
        using var shop = new BenchShop();
        var step = StepTable.Find(verb)!;
        Assert.All(step.Fields.Where(field => !field.IsFlag), field =>
        {
            var values = new Values(shop.Open(), new Filled(name => name == field.Name ? field.Example : null));
            values.ReadAll(step.Inputs);
            Assert.DoesNotContain(values.Problems, problem => problem.Where == field.Name);
        });
    }

    [Theory, MemberData(nameof(PageVerbs))]
    public void Its_example_is_recorded_or_shown(string verb)
    {
        using var shop = new BenchShop();
        var step = StepTable.Find(verb)!;
        if (verb.StartsWith("sheet", StringComparison.Ordinal))
        {
            shop.Label();
        }

        if (verb is "move" or "bottle move")
        {
            shop.PutAside();
        }

        var before = shop.Recorded;
        var outcome = step.Do(shop.Open(), Example(step)).Require();
        Assert.NotEmpty(outcome.Answer.Screen.Blocks);
        Assert.StartsWith("{", outcome.Answer.Json());
        Assert.Equal(step.Looks || WritesOnly.Contains(verb), before == shop.Recorded);
    }

    [Theory, MemberData(nameof(PageVerbs))]
    public void A_fault_in_any_one_field_is_told_there_and_nothing_is_recorded(string verb)
    {
        using var shop = new BenchShop();
        var step = StepTable.Find(verb)!;
        Assert.All(step.Fields.Where(field => !field.IsFlag && !field.IsTypedOnly), field =>
        {
            var before = shop.Recorded;
            var example = Example(step);
            var result = step.Do(shop.Open(), new Filled(name => name == field.Name ? Unreadable : null, example));
            Assert.True(!result.Ok || OfLabel.Contains(field.Name), $"{verb} took {field.Name} as it was.");
            Assert.True(result.Ok || before == shop.Recorded, $"{verb} recorded something though {field.Name} could not be read.");
        });
    }

    [Theory, MemberData(nameof(Verbs))]
    public void Every_empty_field_that_is_needed_is_told_at_once(string verb)
    {
        using var shop = new BenchShop();
        var step = StepTable.Find(verb)!;
        var told = step.Do(shop.Open(), new Filled(_ => null)).Problems;
        Assert.Superset(Needed(shop, step).Select(field => field.Name).ToHashSet(), told.Select(problem => problem.Where!).ToHashSet());
    }

    /// <summary>With its words, example and help as they stand in this step, and not as they were where the input was first made.</summary>
    [Theory, MemberData(nameof(Verbs))]
    public void An_empty_field_is_asked_for_as_the_step_declares_it(string verb)
    {
        using var shop = new BenchShop();
        var step = StepTable.Find(verb)!;
        Assert.All(Needed(shop, step), missed => Assert.Contains(missed, step.Inputs.SelectMany(input => input.Fields)));
    }

    [Fact]
    public void An_input_that_is_not_declared_cannot_be_asked_for()
    {
        using var shop = new BenchShop();
        var values = new Values(shop.Open(), new Filled(_ => null));
        Assert.Throws<InvalidOperationException>(() => values.Get(Shared.Job));
    }

    /// <summary>No reader takes it: no number, no word of ours, and a sign that no label prints.</summary>
    private const string Unreadable = "\u2603 none";

    /// <summary>Which label, which a step looks up only where it comes to write one.</summary>
    private static readonly string[] OfLabel = ["design", "sheet", "printer", "print-to"];

    /// <summary>They write a file and record nothing.</summary>
    private static readonly string[] WritesOnly = ["notice", "calibrate"];

    private static Filled Example(Step step) => new(name => step.Example.FirstOrDefault(one => one.Name == name).Value)
    {
        All = step.Example.Where(one => !step.IsOfJar || one.Name != "jar").Concat(step.IsOfJar ? [new InputName("jar", "1")] : []).ToLookup(one => one.Name, one => one.Value!),
    };

    private static List<Field> Needed(BenchShop shop, Step step)
    {
        var source = new Filled(_ => null);
        new Values(shop.Open(), source).ReadAll(step.Inputs);
        return source.Missed;
    }

    private sealed class Filled(Func<string, string?> texts, Filled? rest = null) : IValueSource
    {
        internal List<Field> Missed { get; } = [];

        internal ILookup<string, string>? All { get; init; }

        public IReadOnlyList<string> Texts(string name) =>
            All is not null ? [.. All[name].Distinct()] : texts(name) is { } text ? [text] : rest?.Texts(name) ?? [];

        public Problem Missing(Field field)
        {
            Missed.Add(field);
            return new Problem("JL106", "missing", field.Name);
        }
    }
}
