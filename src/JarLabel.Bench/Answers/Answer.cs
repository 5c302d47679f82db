using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using JarLabel.Core;

namespace JarLabel.Bench.Answers;

/// <summary>What a command has to say: once for a person, once for a program.</summary>
/// <param name="Screen">For a person.</param>
/// <param name="Json">For a program: one JSON object.</param>
/// <param name="Warnings">What went through but should be known.</param>
internal sealed record Answer(Screen Screen, Func<string> Json, IReadOnlyList<Problem> Warnings)
{
    /// <summary>What went wrong after all that is told was recorded: a label that did not get onto paper.</summary>
    internal IReadOnlyList<Problem> Failures { get; init; } = [];

    /// <summary>An answer; how it is written as JSON is made only when JSON is asked for, which takes longer than all the rest.</summary>
    internal static Answer Of<T>(Screen screen, T json, Func<AnswerContext, JsonTypeInfo<T>> type, IReadOnlyList<Problem>? warnings = null) =>
        Of(screen, json, () => type(AnswerContext.Default), warnings);

    /// <summary>The same with a shape of its own.</summary>
    internal static Answer Of<T>(Screen screen, T json, Func<JsonTypeInfo<T>> type, IReadOnlyList<Problem>? warnings = null) =>
        new(screen, () => JsonSerializer.Serialize(json, type()), warnings ?? []);
}
