using System.Text.Json.Serialization.Metadata;

namespace JarLabel.Operations.Answers;

/// <summary>Problems as a surface writes them.</summary>
internal delegate IReadOnlyList<Problem> Tell(IReadOnlyList<Problem> told);

/// <summary>What a command has to say: once for a person, once for a program.</summary>
/// <param name="Screen">For a person.</param>
/// <param name="Writes">For a program: one JSON object, its problems as they are to be told.</param>
/// <param name="Warnings">What went through but should be known.</param>
internal sealed record Answer(Screen Screen, Func<Tell, string> Writes, IReadOnlyList<Problem> Warnings)
{
    private Tell tell = told => told;

    /// <summary>For a program: one JSON object.</summary>
    internal string Json() => Writes(tell);

    /// <summary>The same with its problems as a surface writes them, on the screen and in JSON.</summary>
    internal Answer As(Tell told) => this with { Warnings = told(Warnings), Failures = told(Failures), tell = told };

    /// <summary>What went wrong after all that is told was recorded: a label that did not get onto paper.</summary>
    internal IReadOnlyList<Problem> Failures { get; init; } = [];

    /// <summary>The answer when the work is over: that it was a rehearsal, if it was, and which finished files are not in their places yet.</summary>
    internal Answer After(Workbench bench)
    {
        var said = bench.DryRun ? this with { Screen = Screen.Rehearsed() } : this;
        return bench.Unmoved.Count + bench.Waiting.Count == 0 ? said : said.With(bench.Waiting, bench.Unmoved);
    }

    /// <summary>The same with what came to light afterwards.</summary>
    /// <param name="warnings">What should be known.</param>
    /// <param name="failures">What went wrong after all was recorded.</param>
    internal Answer With(IReadOnlyList<Problem> warnings, IReadOnlyList<Problem> failures)
    {
        var after = this with { Warnings = [.. Warnings, .. warnings], Failures = [.. Failures, .. failures] };
        return after with { Writes = told => Told(Writes(told), after.As(told)) };
    }

    private static string Told(string json, Answer after)
    {
        var said = JsonNode.Parse(json)!.AsObject();
        said["warnings"] = JsonSerializer.SerializeToNode(after.Warnings, AnswerContext.Default.IReadOnlyListProblem);
        if (after.Failures.Count > 0)
        {
            said["problems"] = JsonSerializer.SerializeToNode(after.Failures, AnswerContext.Default.IReadOnlyListProblem);
        }

        return said.ToJsonString(AnswerContext.Default.Options);
    }

    /// <summary>An answer; how it is written as JSON is made only when JSON is asked for, which takes longer than all the rest.</summary>
    internal static Answer Of<T>(Screen screen, T json, Func<AnswerContext, JsonTypeInfo<T>> type) => Of(screen, json, () => type(AnswerContext.Default));

    /// <summary>An answer with cautions, which each surface spells.</summary>
    internal static Answer Of<T>(Screen screen, Func<Tell, T> json, Func<AnswerContext, JsonTypeInfo<T>> type, IReadOnlyList<Problem> warnings) =>
        new(screen, tell => JsonSerializer.Serialize(json(tell), type(AnswerContext.Default)), warnings);

    /// <summary>The same with a shape of its own.</summary>
    internal static Answer Of<T>(Screen screen, T json, Func<JsonTypeInfo<T>> type) => new(screen, _ => JsonSerializer.Serialize(json, type()), []);
}
