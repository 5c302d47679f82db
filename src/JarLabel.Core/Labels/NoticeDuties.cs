namespace JarLabel.Core.Labels;

/// <summary>What to do beside a solvent shelf, and when something goes wrong: one word and its sentences each. Common practice, except
/// where a source is named.</summary>
internal static class NoticeDuties
{
    internal static IReadOnlyList<IReadOnlyList<string>> Of(NoticeFacts facts)
    {
        var us = facts.Rules == RuleSet.Osha;
        var vapor = us ? "vapor" : "vapour";
        var methanol = facts.Stock.WithMethanol.Count > 0 || facts.Stock.Toxic;
        return
        [
            ["First aid", string.Join(' ', FirstAidWords.Of(methanol, facts.Rules, facts.PoisonCenter))],
            .. facts.Stock.Liquids.Any(l => l.Hazards.PoisonWording) ? (string[][])[["Poison", PoisonWords.Text]] : [],
            ["Fire", $"Alcohol-resistant foam, powder or CO₂, no jet of water. Not out at once: get out, shut the door, call {PoisonCenter.Emergency(facts.Rules)}."],
            ["Spill", "No flame. Touch no switch; cut the power from outside. Air, soak up, carry outdoors."],
            ["Flame", $"{Capital.Of(vapor)} is heavier than air: it runs along the floor and flashes back. No spark, heater or pilot light. The flame is nearly invisible by day."],
            ["Air", $"Doors open, a fan that blows outdoors, its motor out of the {vapor}; a dust extractor does not help."],
            ["Pour", $"Over a tray; nozzle and metal container bonded and grounded at any size{(us ? " (29 CFR 1910.106(e)(6)(ii))" : "")}. Gloves, goggles.{(methanol ? " Methanol soon goes through nitrile, and a cartridge mask does not hold it." : "")}"],
            ["Dissolve", "In warm water away from any flame; no stove, blender or grinder near alcohol."],
            ["Rags", "Alcohol: spread singly outdoors to dry. Drying oil: they heat by themselves and burn; flat outdoors, or under water in a closed metal can."],
            ["Waste", $"{WasteWords.ToThePoint} Locked from children{(methanol ? ", child-resistant lids" : "")}; no drinking vessels."],
        ];
    }
}
