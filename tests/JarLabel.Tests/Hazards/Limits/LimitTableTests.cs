using System.Text.Json.Nodes;

namespace JarLabel.Tests.Hazards.Limits;

/// <summary>Compositions on both sides of every limit, under both rule sets, and whether they would notice a limit that moved.</summary>
[Cites(References.Clp, "Annex I tables 1.1, 2.6.1, 3.1.1, 3.2.3, 3.3.3, 3.4.5, 3.4.6, 3.5.2, 3.6.2, 3.7.2, 3.8.3, 3.9.4; 2.6.4.2, 3.1.3.6, 3.8.3.4.5, 3.10.3.3.1.1; Annex II 2.8")]
[Cites(References.Osha1200, "Appendix A tables A.1.1, A.2.3, A.3.3, A.4.5, A.5.1, A.6.1, A.7.1, A.8.2, A.9.4; A.1.3.3(a), A.1.3.6.1(a), A.10.3.3.1; Appendix B.6")]
[Cites(References.UnGhsPaper, "annex 2, example 1 (a)")]
[Cites(References.EngineeringToolBox, "flash points of ethanol-water solutions")]
public class LimitTableTests
{
    /// <summary>Limits of 1 % for ingredients that count from 1 %: whatever counts at all has passed them, so that a lower one changes nothing.</summary>
    private static readonly string[] WithoutEffect =
        ["skin-irrit-2 limits.of.1.clp -", "skin-irrit-2 limits.of.1.osha -", "eye-irrit-2 limits.of.1.clp -", "eye-irrit-2 limits.of.1.osha -", "eye-irrit-2 limits.of.2.clp -", "eye-irrit-2 limits.of.2.osha -"];

    private static readonly ShopCatalog Shop = LimitTable.Shop();

    public static TheoryData<string, RuleSet> Checks { get; } =
        [.. LimitTable.Rows.SelectMany(row => Enum.GetValues<RuleSet>().Select(rules => new TheoryDataRow<string, RuleSet>(row.Contents, rules)))];

    [Theory, MemberData(nameof(Checks))]
    public void Every_composition_is_what_the_rule_says(string contents, RuleSet rules)
    {
        var row = LimitTable.Rows.Single(r => r.Contents == contents);
        Assert.Equal(Expected(row, rules), LimitTable.Answer(row, rules, Shop));
    }

    [Fact]
    public void There_are_rows_for_every_class_and_no_composition_stands_twice()
    {
        Assert.InRange(LimitTable.Rows.Count, 80, 500);
        Assert.Equal(LimitTable.Rows.Count, LimitTable.Rows.Select(r => r.Contents).Distinct().Count());
        var said = LimitTable.Rows.SelectMany(r => $"{r.Clp} {r.Osha}".Split(' ')).Select(s => s.Split('/')[0]).ToHashSet();
        Assert.All(Shop.Classes.Rows, c => Assert.Contains(c.Statement, said));
    }

    /// <summary>A limit moved by one in its last figure, either way, in a copy of the catalog: some row's answer has to change.</summary>
    [Fact]
    public void A_limit_that_moves_by_one_unit_is_noticed()
    {
        var rows = JsonNode.Parse(
            File.ReadAllText(Path.Combine(Checkout.Root, "src", "JarLabel.Core", "Catalog", "data", "classes.json")),
            documentOptions: new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true })!.AsArray();
        var moved = rows.Select(r => r!.AsObject()).SelectMany(Moves).ToArray();
        Assert.InRange(moved.Length, 150, 1000);
        Assert.Equal(WithoutEffect.Order(StringComparer.Ordinal), moved.AsParallel().Where(m => !IsNoticed(m.Row)).Select(m => m.What).Order(StringComparer.Ordinal));
    }

    private static bool IsNoticed(string row)
    {
        var shop = LimitTable.Shop($"[{row}]");
        return LimitTable.Rows.Any(r => Enum.GetValues<RuleSet>().Any(rules => LimitTable.Answer(r, rules, shop) != Expected(r, rules)));
    }

    private static string Expected(LimitRow row, RuleSet rules) => rules == RuleSet.Clp ? row.Clp : row.Osha;

    private static IEnumerable<(string What, string Row)> Moves(JsonObject row) =>
        Numbers(row, []).SelectMany(path => new[] { 1, -1 }.Select(way => (What(row, path, way), Moved(row, path, way))));

    private static string What(JsonObject row, string[] path, int way) => $"{row["id"]} {string.Join('.', path)} {(way > 0 ? '+' : '-')}";

    private static string Moved(JsonObject row, string[] path, int way)
    {
        var copy = row.DeepClone();
        var holder = path[..^1].Aggregate(copy, (node, step) => node is JsonArray list ? list[int.Parse(step, CultureInfo.InvariantCulture)]! : node[step]!);
        var value = holder[path[^1]]!.GetValue<decimal>();
        holder[path[^1]] = value + (way * Unit(row, path, value));
        return copy.ToJsonString();
    }

    /// <summary>1 °C, 1 mg/kg, 0.1 mg/L; of a percentage a tenth, and of one below 1 or 0.1 one in its last figure.</summary>
    private static decimal Unit(JsonObject row, string[] path, decimal value) => path switch
    {
        ["flash", _] => 1,
        ["acute", "upTo" or "oshaCountsUpTo"] => (string?)row["acute"]!["route"] == "vapor" ? 0.1m : 1,
        _ => value < 0.1m ? 0.001m : value < 1 ? 0.01m : 0.1m,
    };

    private static IEnumerable<string[]> Numbers(JsonNode? node, string[] path) => node switch
    {
        JsonObject members => members.SelectMany(m => Numbers(m.Value, [.. path, m.Key])),
        JsonArray list => list.SelectMany((item, i) => Numbers(item, [.. path, i.ToString(CultureInfo.InvariantCulture)])),
        JsonValue value when value.GetValueKind() == JsonValueKind.Number => [path],
        _ => [],
    };
}
