namespace JarLabel.Core.Labels;

/// <summary>How to treat the jar, in whole sentences, the most important first. Common practice.</summary>
internal static class HandlingWords
{
    internal static IReadOnlyList<string> For(LabelFacts facts) =>
    [
        .. facts.Hazards.Doubts,
        "Use-by is an estimate: past the test date let a few drops dry on glass. Still soft or tacky after 15 minutes, or marked by a thumbnail later: discard.",
        "Keep the lid tight, cool and dark: alcohol draws water from the air and the finish blushes.",
        .. Wax(facts),
        DissolveWords.Safely,
        RagWords.AtTheBench,
    ];

    private static string[] Wax(LabelFacts facts) =>
        facts.Jar.Contents.Resins.Any(r => facts.Catalog.GradeOf(r.Grade).HindersVarnishOnTop)
            ? ["It holds its wax: varnish or polyurethane does not hold on top."]
            : [];
}
