using static JarLabel.Tests.Layout.SampleLabels;

namespace JarLabel.Tests.Layout;

/// <summary>Invented notices for a solvent shelf.</summary>
public static class SampleNotices
{
    private static readonly string[][] Duties =
    [
        ["First aid", "Swallowed: call the poison center (1-800-222-1222), for a child at once. Do not cause vomiting. Eyes: rinse for 15 minutes, lenses out; see a doctor. Skin: wet clothing off, wash with plenty of water. Breathed in, faint or dizzy: fresh air; call if it does not pass. Unconscious, cramps or hard to breathe: 911."],
        ["Fire", "Alcohol-resistant foam, powder or CO₂, no jet of water. Not out at once: get out, shut the door, call 911."],
        ["Spill", "No flame. Touch no switch; cut the power from outside. Air, soak up, carry outdoors."],
        ["Flame", "Vapor is heavier than air: it runs along the floor and flashes back. No spark, heater or pilot light. The flame is nearly invisible by day."],
        ["Air", "Doors open, a fan that blows outdoors, its motor out of the vapor; a dust extractor does not help."],
        ["Pour", "Over a tray; nozzle and metal container bonded and grounded at any size (29 CFR 1910.106(e)(6)(ii)). Gloves, goggles."],
        ["Dissolve", "In warm water away from any flame; no stove, blender or grinder near alcohol."],
        ["Rags", "Alcohol: spread singly outdoors to dry. Drying oil: they heat by themselves and burn; flat outdoors, or under water in a closed metal can."],
        ["Waste", "To the hazardous-waste point, never the drain. Locked from children; no drinking vessels."],
    ];

    private static readonly string[][] Air =
    [
        ["Air when 8.5 fl oz dries in 1770 cu ft", ""],
        ["in the air at the most, closed room", "1960 ppm"],
        ["the most to breathe over a shift", "1000 ppm"],
        ["of the least that burns (LEL); keep under 25 %", "5.9 %"],
        ["fresh air for that, in 1 h (mixing factor 3)", "173 cfm"],
        ["5.4 sq ft window, another across, faint breeze", "≈ 318 cfm"],
    ];

    private static readonly string[][] Limits =
    [
        ["At home", "ask the fire department what a dwelling may keep: far less than a workplace may, as below."],
        ["1 US quart", "A workplace may keep a category 2 liquid in glass or approved plastic of at most 1 US quart; to 1 US gallon only where metal is unfit and a quart of one lot too little. 29 CFR 1910.106(d)(2), table H-12"],
        ["60 US gallons", "One flammables cabinet holds at most 60 US gallons of category 1, 2 and 3 liquids. 29 CFR 1910.106(d)(3)"],
    ];

    public static IReadOnlyDictionary<string, LabelText> All { get; } = new Dictionary<string, LabelText>(StringComparer.Ordinal)
    {
        ["shortest"] = Notice("warning", "WARNING", ["W021"], "Lids tight.", [["Shelf loft, 1 May 2026", "jars", "amount"], ["flammable (cat. 3)", "1", "250 mL (8.5 fl oz)"]], Duties[..3], Limits[..2]),
        ["typical"] = Notice("danger", "DANGER", ["W021"], "Lids tight.", [["Shelf main, 9 Mar 2026", "jars", "amount"], ["highly flammable (cat. 2)", "3", "1.57 L (53.2 fl oz)"]], Duties, Limits),
        ["longest"] = Notice(
            "danger",
            "DANGER",
            ["W021", "W016"],
            "Do not drink.",
            [
                ["Shelf cellar, north wall, 28 Sep 2026", "jars", "amount"],
                ["highly flammable (cat. 2)", "112", "118.40 L (31.28 gal)"],
                ["flammable (cat. 3)", "12", "8.40 L (2.22 gal)"],
                ["of these with methanol", "34", "31.20 L (8.24 gal)"],
            ],
            [["First aid", "Swallowed: call the poison center (1-800-222-1222) at once, even when well; signs of methanol may come 10 to 48 h late. Do not cause vomiting. Eyes: rinse for 15 minutes, lenses out; see a doctor. Skin: wet clothing off, wash with plenty of water. Breathed in: fresh air; dizzy or sight blurred: call at once. Unconscious, cramps or hard to breathe: 911."], ["Poison", "POISON. Vapor harmful. May be fatal or cause blindness if swallowed. Cannot be made nonpoisonous."], .. Duties[1..]],
            [.. Limits, ["25 US gallons", "PASSED NOW. On a construction site at most 25 US gallons of flammable liquids in a room outside a cabinet. 29 CFR 1926.152(b)(1)"]]),
    };

    private static LabelText Notice(string signal, string word, string[] signs, string middle, string[][] stock, string[][] duties, string[][] limits) => new(
        Words(
            (signal, [word]),
            ("owner", ["Larkwood Finishing Room"]),
            ("closing", ["The local fire code, the alcohol's own label and data sheet, and licensed practice come first."])),
        Lists(("sentences", ["Air the room.", middle, "Rags outside."])),
        Tables(("stock", stock), ("air", Air), ("duties", duties), ("limits", limits)),
        signs,
        null,
        null);
}
