namespace JarLabel.Tests.Hazards;

/// <summary>Short ways to say a mixture in a test.</summary>
internal static class Mixtures
{
    internal static ShopCatalog Ours => ShopCatalog.Ours;

    internal static Composition Of(string contents) => ContentsText.Parse(contents, Ours).Require();

    internal static HazardAssessment Assess(string contents, RuleSet rules) => MixtureClassifier.Classify(Of(contents), rules, Ours);

    internal static string Statements(string contents, RuleSet rules) => string.Join(' ', Assess(contents, rules).Statements);

    /// <summary>A substance with acute toxicity and nothing else.</summary>
    internal static Substance Toxic(string id, params (Route Route, decimal Ate)[] ates) =>
        new(id, id, "test") { AcuteToxicity = [.. ates.Select(a => new AcuteToxicity(a.Route, a.Ate, "test"))] };

    internal static HazardAssessment Assess(RuleSet rules, params (Substance Substance, decimal Percent)[] shares) =>
        MixtureClassifier.Classify(Composition.FromPercentages(shares.Select(s => new Ingredient(s.Substance, s.Percent))), rules, Ours);
}
