namespace JarLabel.Operations.Answers;

/// <summary>Of an alcohol that can poison, the words of its bottle and whom to call; nothing of another.</summary>
internal static class PoisonRows
{
    internal static IEnumerable<(string, string?)> Of(Workbench bench, HazardAssessment hazards) =>
        [("poison", hazards.PoisonWording ? PoisonWords.Text : null), .. hazards.MethanolCounts ? ListedRows.Of("first aid", FirstAidWords.Of(hazards, bench.Settings.PoisonCenter)) : []];
}
