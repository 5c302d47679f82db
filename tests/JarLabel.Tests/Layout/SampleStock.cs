using static JarLabel.Tests.Layout.SampleLabels;

namespace JarLabel.Tests.Layout;

/// <summary>Invented labels for bags of flakes and bottles of solvent.</summary>
public static class SampleStock
{
    public static IReadOnlyDictionary<string, LabelText> Bags { get; } = new Dictionary<string, LabelText>(StringComparer.Ordinal)
    {
        ["shortest"] = Bag("Ruby", "250 g", new Tone(5, false), "1 May 2026", "HTTP://192.168.1.20:5080/B/3-2", "3-2"),
        ["typical"] = Bag("Garnet, dewaxed", "1 lb · 454 g when opened", new Tone(4, false), "9 Mar 2026", "HTTP://192.168.1.20:5080/B/12-9", "12-9"),
        ["longest"] = Bag(
            "Buttonlac, hand-made, waxy",
            "2 lb 3 oz · 1000 g when opened, from the second delivery of the year",
            new Tone(4, true),
            "28 Sep 2026",
            "HTTP://192.168.1.20:5080/B/10488-3",
            "10488-3"),
    };

    public static IReadOnlyDictionary<string, LabelText> Bottles { get; } = new Dictionary<string, LabelText>(StringComparer.Ordinal)
    {
        ["shortest"] = Bottle("Ethanol 99 %", "Ethanol", ["GHS02"], ["Highly flammable liquid and vapor"]),
        ["typical"] = Bottle(
            "Ethanol 95 %",
            "Ethanol 92 %, water 8 % by weight",
            ["GHS02", "GHS07"],
            ["Highly flammable liquid and vapor", "Causes serious eye irritation"]),
        ["longest"] = Bottle(
            "Denatured alcohol, composition unknown",
            "Ethanol 50 %, methanol 45 %, water 5 % by weight; taken as methanol-rich, the can names no composition",
            ["GHS02", "GHS06", "GHS08"],
            [
                "Highly flammable liquid and vapor",
                "Toxic if swallowed, in contact with skin or if inhaled",
                "Causes damage to organs (optic nerve, central nervous system)",
            ],
            "POISON. Vapor harmful. May be fatal or cause blindness if swallowed. Cannot be made nonpoisonous."),
    };

    private static LabelText Bag(string grade, string amount, Tone tone, string bought, string code, string number) => new(
        Words(("grade", [grade]), ("amounts", [amount]), ("owner", ["Larkwood Finishing Room"]), ("jar", [number])),
        Lists(),
        Tables(("dates", [["bought", bought]])),
        [],
        tone,
        code);

    private static LabelText Bottle(string title, string contents, string[] pictograms, string[] hazards, string? poison = null) => new(
        Words(
            ("title", [title]),
            ("contents", [contents]),
            ("owner", ["Larkwood Finishing Room"]),
            ("jar", ["7-6"]),
            ("signal", [poison is null ? "DANGER" : "DANGER · POISON"]),
            ("lid", poison is null ? [] : ["Keep out of the reach of children: child-resistant lid, locked away.", "Keep out of the reach of children: child-resistant lid."]),
            ("poison", poison is null ? [] : [poison]),
            ("moreOnCard", ["all phrases: data sheet"])),
        Lists(("hazards", hazards)),
        Tables(("dates", [["opened", "9 Mar 2026"]])),
        pictograms,
        null,
        "HTTP://192.168.1.20:5080/S/7-6");
}
