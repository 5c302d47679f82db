namespace JarLabel.Cli.Answers;

/// <summary>What <c>designs</c> says to a program.</summary>
internal sealed record DesignsAnswerJson(IReadOnlyList<DesignJson> Designs);
