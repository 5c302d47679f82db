namespace JarLabel.Web.Forms;

/// <summary>One thing to fill in.</summary>
/// <param name="Name">The identity of what it holds: <c>cut</c>.</param>
/// <param name="Label">What it is called here.</param>
/// <param name="Hint">What may be written, with an example.</param>
internal sealed record Field(string Name, string Label, string? Hint = null)
{
    /// <summary>What can be chosen, each with its words; null for a line of text.</summary>
    internal IReadOnlyList<(string Value, string Words)>? Choices { get; init; }

    /// <summary>What stands in it at first.</summary>
    internal string? First { get; init; }

    /// <summary>True for a box to tick.</summary>
    internal bool Tick { get; init; }

    /// <summary>True for what is seldom needed and is folded away.</summary>
    internal bool Seldom { get; init; }
}
