namespace JarLabel.Cli.Answers;

/// <summary>A text of help.</summary>
/// <param name="Topic">Its name; empty for where to begin.</param>
/// <param name="Text">The text.</param>
internal sealed record HelpAnswerJson(string Topic, string Text);
