namespace JarLabel.Acceptance.Kills;

/// <summary>Everything a shop recorded, read from its export, and the rules that hold whatever was killed: events without a gap, steps
/// whole, a label a step, every place of a sheet taken by one label and none for nothing.</summary>
internal sealed class WholeRecord
{
    private readonly List<JsonNode> events;

    private WholeRecord(List<JsonNode> events) => this.events = events;

    /// <summary>The jars and revisions that were mixed or thinned, in order.</summary>
    internal IReadOnlyList<(int Jar, int Revision)> Steps => [.. Contents.Select(Of)];

    private IEnumerable<JsonNode> Contents => events.Where(e => Kind(e) is "Mixed" or "Thinned");

    private IEnumerable<JsonNode> Labels => events.Where(e => Kind(e) == "Labelled");

    /// <summary>The places taken, in order: sheets are filled place by place, each with the label recorded with it.</summary>
    private IReadOnlyList<(int Sheet, int Place)> Taken =>
        [.. events.Where(e => Kind(e) == "Taken").SelectMany(e => e["body"]!["places"]!.AsArray().Select(p => (Number(e), p!.GetValue<int>())))];

    /// <summary>Reads the export of a shop.</summary>
    internal static WholeRecord Of(Shop shop)
    {
        var file = Path.Combine(shop.Folder, "all.jsonl");
        shop.Json("export", file);
        return new WholeRecord([.. File.ReadLines(file).Skip(1).Select(line => JsonNode.Parse(line)!)]);
    }

    /// <summary>Holds the record against the rules, and the files and sheets of the shop against the record.</summary>
    internal void AssertWhole(Shop shop)
    {
        Assert.Equal(Enumerable.Range(1, events.Count), events.Select(e => e["sequence"]!.GetValue<int>()));
        Assert.Equal(Steps.Order(), Labels.Select(Of).Order());
        Assert.Equal(Steps.Distinct(), Steps);
        Assert.All(Steps.GroupBy(step => step.Jar), jar => Assert.Equal(Enumerable.Range(1, jar.Count()), jar.Select(step => step.Revision)));
        Assert.Equal(Enumerable.Range(1, Steps.Max(step => step.Jar)), Steps.Select(step => step.Jar).Distinct().Order());
        Assert.Equal(Taken.Order().Distinct(), Taken);
        Assert.Equal(Taken.Select(place => place.Place), Labels.Select(e => e["body"]!["position"]!.GetValue<int>()));
        AssertFiles(shop);
    }

    /// <summary>The program sees the open sheet as the record tells it.</summary>
    internal void AssertSheet(Shop shop)
    {
        var open = shop.Json("sheet", "state")["sheets"]![0]!;
        Assert.Equal(Taken[^1].Sheet, Number(open));
        Assert.Equal(Taken.Where(place => place.Sheet == Taken[^1].Sheet).Select(place => place.Place), open["taken"]!.AsArray().Select(p => p!.GetValue<int>()));
    }

    private void AssertFiles(Shop shop)
    {
        var written = Labels.GroupBy(e => e["body"]!["file"]!.GetValue<string>()).ToDictionary(g => Path.Combine(shop.Folder, g.Key), g => g.Last()["body"]!["sha256"]!.GetValue<string>());
        Assert.Equal(written.Keys.Order(StringComparer.Ordinal), Directory.GetFiles(shop.Labels).Order(StringComparer.Ordinal));
        Assert.All(written, file => Assert.Equal(file.Value, Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(file.Key)))));
        Assert.Empty(Directory.EnumerateFileSystemEntries(Path.Combine(shop.Folder, "staging")));
    }

    private static string Kind(JsonNode one) => one["kind"]!.GetValue<string>();

    private static int Number(JsonNode one) => one["number"]!.GetValue<int>();

    private static (int Jar, int Revision) Of(JsonNode one) => (Number(one), one["revision"]!.GetValue<int>());
}
