using JarLabel.Core;
using JarLabel.Core.Jars;

namespace JarLabel.Bench.Steps;

/// <summary>Something that is done at the bench, declared once: the command with its help, the form with its live result and the columns of a
/// list are drawn from it.</summary>
/// <param name="Verb">Its name on the command line, and in the page's address: <c>thin</c>.</param>
/// <param name="Title">What it is called on a page: <c>Thin</c>.</param>
/// <param name="Help">What it does, in one line.</param>
/// <param name="Inputs">What it wants to know.</param>
/// <param name="Does">Does it; called only when every input could be read.</param>
internal sealed record Step(string Verb, string Title, string Help, IReadOnlyList<Input> Inputs, Func<Values, Result<BenchOutcome>> Does)
{
    /// <summary>What the button says.</summary>
    internal string Button { get; init; } = "Record it";

    /// <summary>A sentence above the form; null for none.</summary>
    internal string? Says { get; init; }

    /// <summary>True when what follows is worked out and shown while one types.</summary>
    internal bool WorksOut { get; init; }

    /// <summary>True when nothing need be filled in, so that it can be shown at once what it would do.</summary>
    internal bool NeedsNothing { get; init; }

    /// <summary>Everything to fill in, each once.</summary>
    internal IReadOnlyList<Field> Fields => fields ??= [.. Inputs.SelectMany(input => input.Fields).DistinctBy(one => one.Name)];

    private IReadOnlyList<Field>? fields;

    /// <summary>A step of one jar.</summary>
    internal static Step OnJar(string verb, string title, string help, IReadOnlyList<Input> inputs, Func<Values, Result<BenchOutcome>> does) =>
        new(verb, title, help, [Shared.Jar, .. inputs], does);

    /// <summary>Reads every input, and does the step when nothing was wrong with any.</summary>
    internal Result<BenchOutcome> Do(Workbench bench, IValueSource source)
    {
        var values = new Values(bench, source);
        values.ReadAll(Inputs);
        return values.Problems.Count == 0 ? Does(values) : Result<BenchOutcome>.Failed(values.Problems);
    }

    /// <summary>The jar that a step of one jar acts on.</summary>
    internal static JarNumber Jar(Values given) => given.Get(Shared.Jar);
}
