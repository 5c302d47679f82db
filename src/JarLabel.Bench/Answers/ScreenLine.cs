namespace JarLabel.Bench.Answers;

/// <summary>One line for a person.</summary>
/// <param name="Style">What kind of line it is.</param>
/// <param name="Text">Its text, in full typography.</param>
internal readonly record struct ScreenLine(LineStyle Style, string Text)
{
    /// <summary>The same without typography, where its columns then stand otherwise; else its text is only spelled out.</summary>
    internal string? Plain { get; init; }

    /// <summary>This line without typography.</summary>
    internal ScreenLine Spelled => new(Style, Plain ?? PlainAscii.Of(Text));
}
