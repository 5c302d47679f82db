using System.Runtime.CompilerServices;

namespace JarLabel.Core;

/// <summary>Something to fill in, by its identity, with a value where one is meant.</summary>
/// <param name="Name">Its identity: <c>cut</c>.</param>
/// <param name="Value">What could stand in it.</param>
public readonly record struct InputName(string Name, string? Value = null)
{
    /// <summary>What people call the value where it is chosen from a list; null where it is written as it stands.</summary>
    public string? Words { get; init; }
}

/// <summary>A step that would help, with what to fill in.</summary>
/// <param name="Verb">The step: <c>decant</c>.</param>
/// <param name="Values">What to fill in.</param>
public sealed record Remedy(string Verb, params IReadOnlyList<InputName> Values);

/// <summary>How a surface writes the names that a message leaves open.</summary>
public interface ISpelling
{
    /// <summary>Something to fill in.</summary>
    string Write(InputName input);

    /// <summary>A step that helps.</summary>
    string Write(Remedy remedy);
}

/// <summary>Bare names, where no surface is known.</summary>
internal sealed class BareSpelling : ISpelling
{
    internal static BareSpelling Instance { get; } = new();

    public string Write(InputName input) => input.Value is null ? input.Name : $"{input.Name} {input.Value}";

    public string Write(Remedy remedy) => string.Join(' ', [remedy.Verb, .. remedy.Values.Select(value => value.Value ?? value.Name)]);
}

/// <summary>Collects an interpolated sentence: names stay names, everything else becomes text in the invariant culture.</summary>
[InterpolatedStringHandler]
public readonly struct Sentence
{
    private readonly List<object> parts;

    /// <summary>Begins a sentence.</summary>
    /// <param name="literals">How many letters stand in it.</param>
    /// <param name="holes">How many holes it has.</param>
    public Sentence(int literals, int holes)
    {
        _ = literals;
        parts = new List<object>((2 * holes) + 1);
    }

    internal IReadOnlyList<object> Parts => parts;

    /// <summary>Adds text.</summary>
    public void AppendLiteral(string text) => parts.Add(text);

    /// <summary>Adds something to fill in.</summary>
    public void AppendFormatted(InputName input) => parts.Add(input);

    /// <summary>Adds a step.</summary>
    public void AppendFormatted(Remedy remedy) => parts.Add(remedy);

    /// <summary>Adds a sentence, its names still open.</summary>
    public void AppendFormatted(Message message) => parts.AddRange(message.Parts);

    /// <summary>Adds text.</summary>
    public void AppendFormatted(string? text) => parts.Add(text ?? "");

    /// <summary>Adds a value.</summary>
    public void AppendFormatted<T>(T value, string? format = null) =>
        parts.Add(value is IFormattable formattable ? formattable.ToString(format, CultureInfo.InvariantCulture) : value?.ToString() ?? "");
}
