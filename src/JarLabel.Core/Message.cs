namespace JarLabel.Core;

/// <summary>A sentence for a person. Where it speaks of something to fill in or of a step that helps, it holds what is meant and not how it
/// is written: a command line writes an option, a page the words beside the field.</summary>
public readonly struct Message : IEquatable<Message>
{
    private readonly string? text;
    private readonly IReadOnlyList<object>? parts;
    private readonly IReadOnlyList<Remedy>? remedies;

    private Message(string? text, IReadOnlyList<object>? parts, IReadOnlyList<Remedy>? remedies = null)
    {
        this.text = text;
        this.parts = parts;
        this.remedies = remedies;
    }

    /// <summary>The steps that would help, in the order in which they are named.</summary>
    public IEnumerable<Remedy> Remedies => remedies ?? (parts ?? []).OfType<Remedy>();

    /// <summary>What it is made of: texts, and names left open.</summary>
    internal IReadOnlyList<object> Parts => parts ?? [text ?? ""];

    /// <summary>A sentence that names neither inputs nor steps.</summary>
    public static implicit operator Message(string text) => new(text, null);

    /// <summary>A sentence with its names left open.</summary>
    public static Message Of(Sentence sentence) => new(null, sentence.Parts);

    /// <summary>The sentence as one surface writes it.</summary>
    public string In(ISpelling spelling)
    {
        return parts is null ? text ?? "" : string.Concat(parts.Select(part => part switch
        {
            InputName input => spelling.Write(input),
            Remedy remedy => spelling.Write(remedy),
            _ => (string)part,
        }));
    }

    /// <summary>The sentence as one surface writes it, which still knows the steps that would help.</summary>
    public Message As(ISpelling spelling) => parts is null ? this : new(In(spelling), null, [.. Remedies]);

    /// <summary>The sentence with bare names, for where no surface is known.</summary>
    public override string ToString() => In(BareSpelling.Instance);

    /// <summary>Equal sentences read the same.</summary>
    public bool Equals(Message other) => ToString() == other.ToString();

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Message other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => ToString().GetHashCode(StringComparison.Ordinal);

    /// <summary>True when both read the same.</summary>
    public static bool operator ==(Message one, Message other) => one.Equals(other);

    /// <summary>True when they read differently.</summary>
    public static bool operator !=(Message one, Message other) => !one.Equals(other);
}
