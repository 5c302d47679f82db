namespace JarLabel.Cli.Answers;

/// <summary>One line for a person.</summary>
/// <param name="Style">What kind of line it is.</param>
/// <param name="Text">Its text, in full typography.</param>
internal readonly record struct ScreenLine(LineStyle Style, string Text);
