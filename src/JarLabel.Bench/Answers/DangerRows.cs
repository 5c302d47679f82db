using JarLabel.Core.Hazards;
using JarLabel.Core.Labels;

namespace JarLabel.Bench.Answers;

/// <summary>What is dangerous about a liquid, in rows: signal word and hazards, poison, where methanol counts the first aid, the lid.</summary>
internal static class DangerRows
{
    internal static IEnumerable<(string, string?)> Of(Workbench bench, HazardAssessment hazards) =>
    [
        .. ListedRows.Of(hazards.SignalText ?? "hazards", hazards.StatementTexts(bench.Catalog)),
        .. hazards.PoisonWording ? [("poison", PoisonWords.Text)] : Array.Empty<(string, string?)>(),
        .. hazards.MethanolCounts ? ListedRows.Of("first aid", FirstAidWords.Of(hazards, bench.Settings.PoisonCenter)) : [],
        .. ChildResistantLid.WantedOn(hazards) ? [("lid", "child-resistant, and locked away from children")] : Array.Empty<(string, string?)>(),
    ];
}
