namespace JarLabel.Operations.Steps;

/// <summary>What a step came to: what there is to say, on a screen or to a program.</summary>
/// <param name="Answer">What there is to say.</param>
internal sealed record Outcome(Answer Answer)
{
    /// <summary>How a jar stands after it, where the step was one of a jar.</summary>
    internal JarOutcome? Jar { get; init; }

    /// <summary>The files it wrote.</summary>
    internal IReadOnlyList<string> Files { get; init; } = [];

    /// <summary>What else can be done with what it was about, for a page that has no other way there.</summary>
    internal IReadOnlyList<Remedy> Ways { get; init; } = [];

    /// <summary>True when there was nothing that had to be recorded.</summary>
    internal bool IsNothing { get => field || Jar is { Step: null, Label: null, Made.Count: 0 }; init; }

    /// <summary>The same with its cautions as a surface writes them.</summary>
    internal Outcome As(Tell tell) => this with { Answer = Answer.As(tell), Jar = Jar is null ? null : Jar with { Cautions = tell(Jar.Cautions) } };

    /// <summary>The same with more to be known.</summary>
    internal Outcome And(IReadOnlyList<Problem> cautions) => cautions.Count == 0
        ? this
        : this with { Answer = Answer.With(cautions, []), Jar = Jar is null ? null : Jar with { Cautions = [.. Jar.Cautions, .. cautions] } };

    /// <summary>After a change of a jar.</summary>
    internal static Outcome Changed(Workbench bench, JarOutcome outcome) => new(JarAnswer.Changed(bench, outcome)) { Jar = outcome };
}
