namespace JarLabel.Acceptance;

/// <summary>A can's data sheet, entered without editing JSON.</summary>
public sealed class CanTests : IDisposable
{
    private readonly Shop shop = new();

    private string File => Path.Combine(shop.Folder, "catalog", "solvents.json");

    public void Dispose() => shop.Dispose();

    [Fact]
    public void A_can_with_ranges_is_entered_listed_and_mixed_from()
    {
        var added = shop.Json("can", "add", "the green can", "--contains", "ethanol=30-60,methanol=30-60");
        Assert.Equal("the-green-can", added["can"]!["id"]!.GetValue<string>());
        Assert.True(added["can"]!["inRanges"]!.GetValue<bool>());
        Assert.Contains("H301", Texts(added["hazards"]!["hStatements"])); // 100 / (60/100) is 167 mg/kg
        Assert.Contains("H319", Texts(added["hazards"]!["hStatements"])); // ethanol from 50 %
        Assert.Equal(60m, added["can"]!["byWeight"]![0]!["mostPercent"]!.GetValue<decimal>());
        Assert.Equal("the-green-can", Assert.Single(shop.Json("can", "list")["cans"]!.AsArray())!["id"]!.GetValue<string>());

        // Half and half by weight is 790.3 kg/m3, 350 mL of it 276.6 g.
        var mixed = shop.Json("mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "the-green-can");
        Assert.Equal(276.6, mixed["recipe"]!["pourGrams"]!.GetValue<double>(), 0.05);
        Assert.DoesNotContain("JL171", mixed["warnings"]!.AsArray().Select(w => w!["code"]!.GetValue<string>()));
        Assert.Equal(0, shop.Run("check").ExitCode);
    }

    [Fact]
    public void What_people_wrote_into_the_file_stays_as_it_was()
    {
        const string drum = """
            [
              // the drum in the yard
              { "id": "drum", "name": "the drum", "shortName": "drum", "contains": [{ "ethanolByVolume": 94 }], "source": "practice", },  // keep
              // and nothing more
            ]
            """;
        Directory.CreateDirectory(Path.GetDirectoryName(File)!);
        System.IO.File.WriteAllText(File, drum);
        shop.Json("can", "add", "lamp spirit", "--contains", "ethanol=90,water=rest", "--by-volume", "--id", "lamp");
        shop.Json("can", "add", "other spirit", "--contains", "ethanol=90,water=10");
        var after = System.IO.File.ReadAllText(File);
        Assert.Equal(["drum", "lamp", "other-spirit"], shop.Json("can", "list")["cans"]!.AsArray().Select(c => c!["id"]!.GetValue<string>()));
        Assert.StartsWith(drum[..drum.IndexOf(",  // keep", StringComparison.Ordinal)], after, StringComparison.Ordinal);
        Assert.Contains("// and nothing more", after, StringComparison.Ordinal);
        Assert.Contains("\"byVolume\"", after, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("JL224", "ethanol-95", "ethanol=100")]
    [InlineData("JL223", "???", "ethanol=100")]
    [InlineData("JL153", "green", "ethanol=5")]
    [InlineData("JL201", "green", "ethanoll=100")]
    [InlineData("JL207", "green", "ethanol=99.9,denatonium=0.1", "--by-volume")]
    [InlineData("JL223", "green", "ethanol=100", "--id", "Green Can")]
    public void A_can_that_cannot_be_is_refused_and_nothing_is_written(string code, string name, string contains, params string[] more)
    {
        var run = shop.Run(["can", "add", name, "--contains", contains, .. more, "--json"]);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(code, JsonNode.Parse(run.Result)!["problems"]!.AsArray().Select(p => p!["code"]!.GetValue<string>()));
        Assert.False(System.IO.File.Exists(File));
    }

    [Fact]
    public void A_can_on_record_is_not_changed_and_a_rehearsal_writes_nothing()
    {
        shop.Json("can", "add", "green", "--contains", "ethanol=95,water=5", "--dry-run");
        Assert.False(System.IO.File.Exists(File));
        shop.Json("can", "add", "green", "--contains", "ethanol=95,water=5");
        var before = System.IO.File.ReadAllText(File);
        shop.Json("can", "add", "green", "--contains", "ethanol=95,water=5");
        Assert.Contains("JL224", shop.Run("can", "add", "green", "--contains", "ethanol=90,water=10").Errors, StringComparison.Ordinal);
        Assert.Equal(before, System.IO.File.ReadAllText(File));
    }

    [Fact]
    public void A_catalog_that_cannot_be_written_is_told()
    {
        Directory.CreateDirectory(File); // a folder stands where the file would
        var run = shop.Run("can", "add", "green", "--contains", "ethanol=95,water=5");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("JL225", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Ranges_are_classified_at_their_worst_without_a_can()
    {
        var hazards = shop.Json("calc", "hazards", "--contents", "ethanol=30-60,methanol=30-60,water=rest")["hazards"]!;
        Assert.Contains("H301", Texts(hazards["hStatements"]));
        Assert.Contains("H319", Texts(hazards["hStatements"]));
        Assert.Contains("ranges", hazards["doubts"]![0]!.GetValue<string>(), StringComparison.Ordinal);
    }

    private static IEnumerable<string> Texts(JsonNode? list) => list!.AsArray().Select(text => text!.GetValue<string>());
}
