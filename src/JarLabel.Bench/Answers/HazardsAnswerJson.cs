namespace JarLabel.Bench.Answers;

/// <summary>What <c>calc hazards</c> says.</summary>
internal sealed record HazardsAnswerJson(HazardsJson Hazards);
