namespace JarLabel.Cli.Answers;

/// <summary>A label that was written.</summary>
internal sealed record LabelJson(string File, string Design, string Sheet, int Position, string Payload);
