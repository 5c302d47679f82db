namespace JarLabel.Cli.Answers;

/// <summary>What <c>publish</c> says to a program.</summary>
internal sealed record PublishAnswerJson(string Folder, int Pages, long Bytes);
