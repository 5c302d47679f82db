namespace JarLabel.Bench.Answers;

/// <summary>What <c>calc mix</c> says.</summary>
internal sealed record RecipeAnswerJson(RecipeJson Recipe, IReadOnlyList<Core.Problem> Warnings);
