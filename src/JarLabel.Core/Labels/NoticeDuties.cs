using JarLabel.Core.Catalog;

namespace JarLabel.Core.Labels;

/// <summary>What to do beside a solvent shelf, and when something goes wrong: one word and its sentences each. Common practice, except
/// where a source is named.</summary>
internal static class NoticeDuties
{
    internal static IReadOnlyList<IReadOnlyList<string>> Of(NoticeFacts facts)
    {
        var vapor = facts.Rules == RuleSet.Osha ? "Vapor" : "Vapour";
        var methanol = facts.Stock.WithMethanol.Count > 0 || facts.Stock.Toxic;
        return
        [
            ["Flame", $"{vapor} is heavier than air: it runs along the floor and flashes back. No spark, heater or pilot light. A burning alcohol flame is nearly invisible by day."],
            ["Air", "Doors open and a fan that blows outdoors, its motor out of the vapour; a dust extractor does not help.".Replace("vapour", vapor.ToLowerInvariant(), StringComparison.Ordinal)],
            ["Pour", "Over a tray; bond metal cans of more than 5 L. Gloves and goggles." + (methanol ? " Methanol soon goes through nitrile gloves, and a cartridge mask does not hold it." : "")],
            ["Rags", "Alcohol: spread singly outdoors to dry. With drying oil they heat by themselves and burn: flat outdoors, or under water in a closed metal can."],
            ["Spill", "Flames and switches off, air, soak up, carry outdoors."],
            ["Fire", "Alcohol-resistant foam, powder or CO₂. If it is not out at once: get out, shut the door, call the fire service."],
            ["First aid", methanol ? Poisoned : Splashed],
            ["Waste", "To the hazardous-waste point, never the drain. Keep locked from children; no drinking vessels."],
        ];
    }

    /// <summary>Signs of methanol poisoning may come 10 to 48 hours late (NIOSH; GisChem).</summary>
    private const string Poisoned = "Methanol swallowed: call the poison center at once, even when well; signs may come 10 to 48 h later. Eyes: rinse for minutes. Faint: fresh air, doctor.";

    private const string Splashed = "Eyes: rinse for minutes, see a doctor. Skin: wash. Faint or dizzy: fresh air. Swallowed: call the poison center.";
}
