namespace JarLabel.Acceptance;

public sealed class RecordTests : IDisposable
{
    private readonly Shop shop = new();
    private readonly Shop other = new();

    public RecordTests()
    {
        shop.Json("mix", "--grade", "garnet", "--cut", "2", "--pour", "300 mL", "--solvent", "ethanol-95");
        shop.Json("thin", "1", "--to", "1.5");
        shop.Json("decant", "1", "--into", "100 mL");
    }

    public void Dispose()
    {
        shop.Dispose();
        other.Dispose();
    }

    [Fact]
    public void An_export_gives_the_same_ledger_elsewhere_and_twice_changes_nothing()
    {
        var file = Path.Combine(shop.Folder, "all.jsonl");
        var events = shop.Json("export", file)["events"]!.GetValue<long>();
        Assert.Equal(events, other.Json("import", file)["added"]!.GetValue<long>());
        Assert.Equal(shop.Json("jar", "1").ToJsonString(), other.Json("jar", "1").ToJsonString());
        Assert.Equal(shop.Json("shelf").ToJsonString(), other.Json("shelf").ToJsonString());
        var again = other.Json("import", file);
        Assert.Equal((0, events), (again["added"]!.GetValue<long>(), again["known"]!.GetValue<long>()));
    }

    [Fact]
    public void A_changed_export_is_refused_whole()
    {
        var file = Path.Combine(shop.Folder, "all.jsonl");
        shop.Json("export", file);
        File.WriteAllText(file, File.ReadAllText(file).Replace("garnet", "blonde", StringComparison.Ordinal));
        var run = other.Run("import", file);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("error JL448", run.Errors, StringComparison.Ordinal);
        Assert.Empty(other.Json("shelf")["jars"]!.AsArray());
    }

    [Fact]
    public void A_dry_run_of_an_import_takes_nothing()
    {
        var file = Path.Combine(shop.Folder, "all.jsonl");
        shop.Json("export", file);
        Assert.NotEqual(0, other.Json("import", file, "--dry-run")["added"]!.GetValue<long>());
        Assert.Empty(other.Json("shelf")["jars"]!.AsArray());
    }

    [Fact]
    public void A_backup_takes_the_place_of_a_damaged_ledger_which_is_kept()
    {
        var copy = Path.Combine(shop.Folder, "copy.db");
        var (ledger, events) = (Path.Combine(shop.Folder, "ledger.db"), shop.Json("backup", copy)["events"]!.GetValue<long>());
        Assert.Contains("error JL458", shop.Run("restore", copy).Errors, StringComparison.Ordinal);
        var damaged = File.ReadAllBytes(ledger)[..20_000];
        File.WriteAllBytes(ledger, damaged);
        Assert.Contains("jarlabel restore FILE", shop.Run("jar", "1").Errors, StringComparison.Ordinal);
        Assert.Equal(events, shop.Json("restore", copy, "--dry-run")["events"]!.GetValue<long>());
        Assert.Equal(damaged, File.ReadAllBytes(ledger));
        var answer = shop.Json("restore", copy);
        Assert.Equal(damaged, File.ReadAllBytes(answer["aside"]!.AsArray().Single()!.GetValue<string>()));
        Assert.Equal(events, shop.Json("verify")["events"]!.GetValue<long>());
    }

    [Fact]
    public void A_backup_is_a_ledger_again()
    {
        var answer = shop.Json("backup", Path.Combine(shop.Folder, "copy.db"));
        File.Copy(answer["file"]!.GetValue<string>(), Path.Combine(other.Folder, "ledger.db"));
        Assert.Equal(shop.Json("jar", "2").ToJsonString(), other.Json("jar", "2").ToJsonString());
    }

    [Fact]
    public void Verify_tells_a_sound_shop_from_a_changed_label_file()
    {
        Assert.Equal(2, shop.Json("verify")["jars"]!.GetValue<int>());
        File.AppendAllText(Directory.GetFiles(shop.Labels)[0], "x");
        var run = shop.Run("verify");
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith("error JL466", run.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("JL441", "backup", "/no/such/folder/copy.db")]
    [InlineData("JL441", "export", "/no/such/folder/all.jsonl")]
    [InlineData("JL444", "import", "/no/such/file.jsonl")]
    [InlineData("JL118", "export", " ")]
    public void A_place_that_is_none_is_told(string code, params string[] words)
    {
        var run = shop.Run(words);
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith($"error {code}: ", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_jammed_label_gives_its_place_back_and_a_new_sheet_begins_at_the_first()
    {
        Assert.Equal([1, 2, 3], Taken(shop.Json("sheet", "state")));
        Assert.Equal([1, 3], Taken(shop.Json("sheet", "back", "1", "2")));
        Assert.Equal(2, shop.Json("label", "1")["label"]!["position"]!.GetValue<int>());
        Assert.Empty(Taken(shop.Json("sheet", "new")));
        Assert.Equal(1, shop.Json("label", "1")["label"]!["position"]!.GetValue<int>());
        Assert.StartsWith("error JL433", shop.Run("sheet", "back", "2", "9").Errors, StringComparison.Ordinal);
        Assert.StartsWith("error JL430", shop.Run("sheet", "back", "9", "1").Errors, StringComparison.Ordinal);
        Assert.StartsWith("error JL303", shop.Run("sheet", "new", "nothing").Errors, StringComparison.Ordinal);
        Assert.Contains("[  x][  2]", shop.Run("sheet", "state").Result, StringComparison.Ordinal);
    }

    private static int[] Taken(JsonObject state) => [.. state["sheets"]![0]!["taken"]!.AsArray().Select(p => p!.GetValue<int>())];
}
