namespace JarLabel.Tests.Layout;

/// <summary>Invented labels for designs to be tried with: little, usual and as much as a jar can have to say.</summary>
public static class SampleLabels
{
    private const string Address = "HTTP://192.168.1.20:5080/J/";

    public static IReadOnlyDictionary<string, LabelText> All { get; } = new Dictionary<string, LabelText>(StringComparer.Ordinal)
    {
        ["shortest"] = Shortest(),
        ["typical"] = Typical(),
        ["longest"] = Longest(),
    };

    /// <summary>The samples that a design is made for. The three smallest have room for an address only, not everywhere for the four lines of a code that
    /// needs no network.</summary>
    public static IReadOnlyDictionary<string, LabelText> For(string design) => design switch
    {
        "bag" => SampleStock.Bags,
        "bottle" => SampleStock.Bottles,
        "notice" => SampleNotices.All,
        "tag" or "slip" or "lid" => All.ToDictionary(sample => sample.Key, sample => sample.Value with { Code = Address + "10488-3.12" }),
        _ => All,
    };

    private static LabelText Shortest() => new(
        Words(
            ("cut", ["2"]),
            ("cutUnit", ["lb cut", "lb"]),
            ("cutMetric", ["240 g/L"]),
            ("grade", ["Ruby"]),
            ("jar", ["7-6"]),
            ("revision", ["rev 1"]),
            ("jarLine", ["jar 7-6 · rev 1"]),
            ("solvent", ["in isopropanol 99 %", "isopropanol 99 %"]),
            ("signal", ["DANGER"]),
            ("dangers", ["Highly flammable", "Flammable"]),
            ("moreOnCard", ["all phrases: jar card", "see jar card", "see card"]),
            ("mixedDate", ["1 May 2026"]),
            ("useByDate", ["≈ 1 Jan 2027"])),
        Lists(
            ("hazards", ["Highly flammable liquid and vapor"])),
        Tables(
            ("dates", [["mixed", "1 May 2026"], ["use by ≈", "1 Jan 2027"]])),
        ["GHS02"],
        new Tone(5, false),
        Address + "7-6.1");

    private static LabelText Typical() => new(
        Words(
            ("cut", ["1½"]),
            ("cutUnit", ["lb cut", "lb"]),
            ("cutMetric", ["180 g/L"]),
            ("grade", ["Garnet, dewaxed", "Garnet"]),
            ("jar", ["142-5"]),
            ("revision", ["rev 1"]),
            ("jarLine", ["jar 142-5 · rev 1", "142-5 · rev 1"]),
            ("solvent", ["in ethanol 95 %", "ethanol 95 %"]),
            ("contents", ["Shellac 18 %, ethanol 75 %, water 7 % by weight", "Shellac 18, ethanol 75, water 7 % by weight"]),
            ("batch", ["350 mL + 63 g flakes = 403 mL", "350 mL + 63 g"]),
            ("amounts", ["Poured 350 mL (11¾ fl oz), 63 g (2¼ oz) flakes, makes 403 mL (13⅝ fl oz)"]),
            ("signal", ["DANGER"]),
            ("dangers", ["Highly flammable, irritates eyes", "Flammable, irritates eyes", "Highly flammable", "Flammable"]),
            ("owner", ["Larkwood Finishing Room, Tollgate Lane 4", "Larkwood Finishing Room"]),
            ("job", ["Job: walnut sideboard"]),
            ("by", ["mixed by Ines"]),
            ("mixedDate", ["9 Mar 2026"]),
            ("useByDate", ["≈ 9 Nov 2026"]),
            ("testDate", ["9 Jul 2026"]),
            ("readyDate", ["10 Mar 2026"]),
            ("moreOnCard", ["all phrases: jar card", "see jar card", "see card"]),
            ("closing", ["Local fire code, the maker’s label and data sheet, and licensed practice come first."])),
        Lists(
            ("hazards", ["Highly flammable liquid and vapor", "Causes serious eye irritation"]),
            ("firstAid",
            [
                "Swallowed: call the poison center (1-800-222-1222), for a child at once. Do not cause vomiting.",
                "Eyes: rinse for 15 minutes, lenses out; see a doctor.",
                "Skin: wet clothing off, wash with plenty of water.",
                "Breathed in, faint or dizzy: fresh air; call if it does not pass.",
                "Unconscious, cramps or hard to breathe: 911.",
            ]),
            ("precautions",
            [
                "Keep away from heat, hot surfaces, sparks, open flames and other ignition sources. No smoking.",
                "Keep out of reach of children.",
                "Keep container tightly closed.",
                "Wear protective gloves/eye protection.",
                "IF IN EYES: Rinse cautiously with water for several minutes. Remove contact lenses, if present and easy to do. Continue rinsing.",
                "Store in a well-ventilated place. Keep cool.",
                "Dispose of contents/container according to local regulation.",
            ])),
        Tables(
            ("dates", [["mixed", "9 Mar 2026"], ["use by ≈", "9 Nov 2026"], ["test from ≈", "9 Jul 2026"], ["ready ≈", "10 Mar 2026"]]),
            ("batch",
            [
                ["alcohol, first", "350 mL", "11¾ fl oz", "284 g"],
                ["flakes, then", "", "2¼ oz", "63 g"],
                ["makes", "403 mL", "13⅝ fl oz", "347 g"],
            ]),
            ("thinning",
            [
                ["to cut", "add to 100 mL", "add to this jar"],
                ["1 lb", "43 mL", "175 mL · 5⅞ fl oz"],
                ["¾ lb", "87 mL", "350 mL · 11¾ fl oz"],
                ["½ lb", "174 mL", "700 mL · 23⅝ fl oz"],
            ]),
            ("history", [["9 Mar 2026", "mixed, 1½ lb cut, 403 mL"]])),
        ["GHS02", "GHS07"],
        new Tone(4, false),
        Address + "142-5.1");

    private static LabelText Longest() => new(
        Words(
            ("cut", ["2¾"]),
            ("cutUnit", ["lb cut", "lb"]),
            ("cutMetric", ["330 g/L"]),
            ("grade", ["Buttonlac, hand-made, waxy", "Buttonlac, waxy", "Buttonlac"]),
            ("jar", ["10488-3"]),
            ("revision", ["rev 12"]),
            ("jarLine", ["jar 10488-3 · rev 12", "10488-3 · rev 12"]),
            ("solvent", ["in denatured alcohol, composition unknown", "in denatured alcohol, unknown", "denatured, unknown"]),
            ("contents",
            [
                "Shellac 26 %, ethanol 37 %, methanol 33 %, water 4 % by weight; taken as methanol-rich, the can names no composition",
                "Shellac 26, ethanol 37, methanol 33, water 4 % by weight",
            ]),
            ("batch", ["1890 mL + 623 g flakes = 2410 mL", "1890 mL + 623 g"]),
            ("amounts", ["Poured 1890 mL (2 qt), 623 g (1 lb 6 oz) flakes, makes 2410 mL (2 qt 17½ fl oz)"]),
            ("signal", ["DANGER · POISON"]),
            ("dangers", ["Highly flammable, toxic, damages organs", "Highly flammable, toxic", "Flammable, toxic", "Highly flammable", "Flammable"]),
            ("swallowed",
            [
                "May contain methanol. Swallowed: call 1-800-222-1222 at once, even when well.",
                "May contain methanol. Swallowed: call 1-800-222-1222 at once.",
                "Methanol. Swallowed: call 1-800-222-1222 at once.",
                "Methanol swallowed: call 1-800-222-1222",
                "Methanol: call 1-800-222-1222 at once",
                "Methanol: call 1-800-222-1222",
            ]),
            ("lid", ["Keep out of the reach of children: child-resistant lid, locked away.", "Keep out of the reach of children: child-resistant lid."]),
            ("rags", ["Oily rags heat by themselves and burn: dry flat outdoors, or under water in a closed metal can.", "Oily rags burn by themselves: flat outdoors, or under water."]),
            ("poison",
            [
                "POISON. Vapor harmful. May be fatal or cause blindness if swallowed. Cannot be made nonpoisonous.",
            ]),
            ("owner",
            [
                "Larkwood, Ashby & Daughters Furniture Restoration and Finishing Rooms, Tollgate Lane 4, +1 555 0142",
                "Larkwood, Ashby & Daughters, Tollgate Lane 4, +1 555 0142",
                "Larkwood, Ashby & Daughters",
            ]),
            ("job", ["Job: two mahogany card tables and the organ case of St. Wilfrid’s, second campaign", "Job: card tables, organ case"]),
            ("note", ["Strained twice; keep for the padding coats only."]),
            ("by", ["mixed by Maximilian-Alexander"]),
            ("mixedDate", ["28 Sep 2026"]),
            ("useByDate", ["≈ 28 Aug 2027"]),
            ("testDate", ["28 Mar 2027"]),
            ("readyDate", ["30 Sep 2026"]),
            ("stepsBetween", ["{0} more in between: jarlabel jar 10488"]),
            ("moreOnCard", ["all phrases: jar card", "see jar card", "see card"]),
            ("closing", ["Local fire code, the maker’s label and data sheet, and licensed practice come first."])),
        Lists(
            ("hazards",
            [
                "Highly flammable liquid and vapor",
                "Toxic if swallowed, in contact with skin or if inhaled",
                "Causes damage to organs (optic nerve, central nervous system)",
                "Causes serious eye irritation",
                "May cause drowsiness or dizziness",
            ]),
            ("firstAid",
            [
                "Swallowed: call the poison center (1-800-222-1222) at once, even when well; signs of methanol may come 10 to 48 h late. Do not cause vomiting.",
                "Eyes: rinse for 15 minutes, lenses out; see a doctor.",
                "Skin: wet clothing off, wash with plenty of water.",
                "Breathed in: fresh air; dizzy or sight blurred: call at once.",
                "Unconscious, cramps or hard to breathe: 911.",
            ]),
            ("precautions",
            [
                "Keep away from heat, hot surfaces, sparks, open flames and other ignition sources. No smoking.",
                "Keep out of reach of children.",
                "Do not breathe vapors.",
                "Wear protective gloves/eye protection.",
                "IF SWALLOWED: Immediately call a POISON CENTER/doctor. Rinse mouth.",
                "IF ON SKIN (or hair): Take off immediately all contaminated clothing. Rinse skin with water.",
                "IF INHALED: Remove person to fresh air and keep comfortable for breathing.",
                "IF IN EYES: Rinse cautiously with water for several minutes. Remove contact lenses, if present and easy to do. Continue rinsing.",
                "IF exposed or concerned: Call a POISON CENTER/doctor.",
                "Specific treatment (see supplier’s label).",
                "Wash hands thoroughly after handling.",
                "Do not eat, drink or smoke when using this product.",
                "In case of fire: Use alcohol-resistant foam, dry chemical or carbon dioxide to extinguish.",
                "Store in a well-ventilated place. Keep container tightly closed. Keep cool.",
                "Store locked up.",
                "Ground and bond container and receiving equipment.",
                "Use non-sparking tools.",
                "Take action to prevent static discharges.",
                "Dispose of contents/container according to local regulation.",
            ])),
        Tables(
            ("dates", [["mixed", "28 Sep 2026"], ["use by ≈", "28 Aug 2027"], ["thinned", "30 Nov 2026"], ["test from ≈", "28 Mar 2027"], ["ready ≈", "30 Sep 2026"]]),
            ("batch",
            [
                ["alcohol, first", "1890 mL", "2 qt", "1512 g"],
                ["flakes, then", "", "1 lb 6 oz", "623 g"],
                ["makes", "2410 mL", "2 qt 17½ fl oz", "2135 g"],
            ]),
            ("thinning",
            [
                ["to cut", "add to 100 mL", "add to this jar"],
                ["2 lb", "30 mL", "720 mL · 24¼ fl oz"],
                ["1½ lb", "65 mL", "1570 mL · 1 qt 21 fl oz"],
                ["1 lb", "137 mL", "3300 mL · 3 qt 15⅝ fl oz"],
                ["½ lb", "353 mL", "8500 mL · 2 gal 31 fl oz"],
            ]),
            ("history",
            [
                ["28 Sep 2026", "mixed, 3 lb cut, 2490 mL, by Maximilian-Alexander"],
                ["2 Oct 2026", "tested, dry in 9 minutes"],
                ["14 Oct 2026", "used 250 mL for the organ case, east side"],
                ["30 Nov 2026", "thinned from 3 lb to 2¾ lb, added 170 mL"],
            ])),
        ["GHS02", "GHS06", "GHS08"],
        new Tone(4, true),
        "SHELLAC 2.75 LB BUTTONLAC-WAXY\nMIXED 2026-09-28 USE BY 2027-08-28\nDANGER FLAMMABLE POISON\nJAR 10488-3.12");

    internal static Dictionary<string, IReadOnlyList<string>> Words(params (string Key, string[] Wordings)[] words) =>
        words.ToDictionary(entry => entry.Key, entry => (IReadOnlyList<string>)entry.Wordings, StringComparer.Ordinal);

    internal static Dictionary<string, IReadOnlyList<string>> Lists(params (string Key, string[] Sentences)[] lists) => Words(lists);

    internal static Dictionary<string, IReadOnlyList<IReadOnlyList<string>>> Tables(params (string Key, string[][] Rows)[] tables) =>
        tables.ToDictionary(entry => entry.Key, entry => (IReadOnlyList<IReadOnlyList<string>>)entry.Rows, StringComparer.Ordinal);
}
