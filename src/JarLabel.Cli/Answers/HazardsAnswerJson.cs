namespace JarLabel.Cli.Answers;

/// <summary>What <c>calc hazards</c> says.</summary>
internal sealed record HazardsAnswerJson(HazardsJson Hazards);
