namespace JarLabel.Cli.Answers;

/// <summary>What <c>serve</c> says to a program once it listens.</summary>
internal sealed record ServeAnswerJson(string Address, string? PairingCode);
