namespace JarLabel.Acceptance;

/// <summary>What a run of the program left behind.</summary>
public sealed record Run(int ExitCode, string Result, string Errors);
