using System.Diagnostics.CodeAnalysis;
using JarLabel.Operations.Steps;

namespace JarLabel.Operations.Typing;

/// <summary>Steps and what is filled in as they are typed.</summary>
internal sealed class CommandLine : ISpelling
{
    private readonly bool quoted;

    private CommandLine(bool quoted) => this.quoted = quoted;

    /// <summary>As in a line of its own.</summary>
    internal static CommandLine Bare { get; } = new(quoted: false);

    /// <summary>As within a sentence: a command stands in quotation marks, unless a value in it stands in some.</summary>
    internal static CommandLine Quoted { get; } = new(quoted: true);

    /// <summary>The whole command; null for none.</summary>
    [return: NotNullIfNotNull(nameof(step))]
    internal static string? Of(Remedy? step)
    {
        if (step is null)
        {
            return null;
        }

        var declared = StepTable.Find(step.Verb);
        return string.Join(' ', ["jarlabel", step.Verb, .. step.Values.Select(value => Typed(declared, value))]);
    }

    /// <summary>The option that a field of a step has: the shorter name where no other field is called so.</summary>
    internal static string Option(Step step, Field field) => Option(field.Short is { } shorter && step.Fields.All(other => other.Name != shorter) ? shorter : field.Name);

    /// <summary>An option by its name.</summary>
    internal static string Option(string name) => "--" + name;

    /// <summary>An option with its value, where there is one.</summary>
    internal static string Said(string option, string? value) => value is null ? option : $"{option} {InQuotes(value)}";

    /// <inheritdoc/>
    public string Write(InputName input) => Said(Option(input.Name), input.Value);

    /// <inheritdoc/>
    public string Write(Remedy remedy)
    {
        var line = Of(remedy);
        return !quoted || line.Contains('"', StringComparison.Ordinal) ? line : $"\"{line}\"";
    }

    private static string Typed(Step? step, InputName value) => step?.Fields.FirstOrDefault(field => field.Name == value.Name) switch
    {
        { IsArgument: true } => InQuotes(value.Value ?? value.Name.ToUpperInvariant()),
        { } field => Said(Option(step, field), field.IsFlag ? null : value.Value),
        null => Said(Option(value.Name), value.Value),
    };

    /// <summary>A word as it is typed: one with a blank in it stands in quotation marks.</summary>
    internal static string InQuotes(string value) => value.Contains(' ', StringComparison.Ordinal) ? $"\"{value}\"" : value;
}
