namespace JarLabel.Cli.Answers;

/// <summary>The answer could not be written where it should go. What the command did is done all the same.</summary>
internal sealed class OutputFault(string message) : IOException(message);
