namespace JarLabel.Core;

/// <summary>Something the user or a file must mend: a stable code, a sentence that says what was read, what is allowed
/// and an example, and where it was read (an input such as <c>cut</c>, or <c>file#/path/in/it</c>).</summary>
/// <param name="Code"><c>JL1xx</c> input, <c>JL2xx</c> catalog, <c>JL3xx</c> layout and preflight, <c>JL4xx</c> ledger,
/// <c>JL5xx</c> printing, <c>JL6xx</c> web.</param>
/// <param name="Text">The whole sentence for a person, whose names each surface spells.</param>
/// <param name="Where">The place of the fault, when there is one: the identity of an input, or a place in a file.</param>
public sealed record Problem(string Code, [property: JsonIgnore] Message Text, [property: JsonPropertyOrder(2)] string? Where = null)
{
    /// <summary>The sentence, its names as they are.</summary>
    [JsonPropertyOrder(1)]
    public string Message => Text.ToString();

    /// <summary>The problem as one surface writes it.</summary>
    /// <param name="spelling">How it writes names.</param>
    /// <param name="place">How it writes where a fault is.</param>
    public Problem In(ISpelling spelling, Func<string, string> place) =>
        new Problem(Code, Text.As(spelling), Where is null ? null : place(Where));
}
