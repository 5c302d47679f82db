using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using JarLabel.Core;

namespace JarLabel.Bench.Answers;

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

    /// <summary>An answer; how it is written as JSON is made only when JSON is asked for, which takes longer than all the rest.</summary>
    internal static Answer Of<T>(Screen screen, T json, Func<AnswerContext, JsonTypeInfo<T>> type) => Of(screen, json, () => type(AnswerContext.Default));

    /// <summary>An answer with cautions, which each surface spells.</summary>
    internal static Answer Of<T>(Screen screen, Func<Tell, T> json, Func<AnswerContext, JsonTypeInfo<T>> type, IReadOnlyList<Problem> warnings) =>
        new(screen, tell => JsonSerializer.Serialize(json(tell), type(AnswerContext.Default)), warnings);

    /// <summary>The same with a shape of its own.</summary>
    internal static Answer Of<T>(Screen screen, T json, Func<JsonTypeInfo<T>> type) => new(screen, _ => JsonSerializer.Serialize(json, type()), []);
}
