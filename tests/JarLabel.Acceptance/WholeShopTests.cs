namespace JarLabel.Acceptance;

/// <summary>A shop moved to another machine: by a backup whole, by an export its events alone.</summary>
public sealed class WholeShopTests : IDisposable
{
    private readonly Shop shop = new();
    private readonly Shop other = new();

    public WholeShopTests()
    {
        shop.Json("shop", "set", "shelf", "cellar=16C");
        shop.Json("can", "add", "the green can", "--contains", "ethanol=95,methanol=5");
        shop.Json("mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "the-green-can");
    }

    public void Dispose()
    {
        shop.Dispose();
        other.Dispose();
    }

    [Fact]
    public void From_a_backup_the_shop_is_as_it_was()
    {
        var file = Path.Combine(shop.Folder, "whole.db");
        Assert.Equal(["catalog/solvents.json", "labels/jar-1-9-r1-wide.pdf", "shop.json"], Texts(shop.Json("backup", file)["files"]));
        var there = Path.Combine(other.Folder, "there");
        Assert.Equal(3, other.Json("restore", file, there)["brought"]!.AsArray().Count);
        foreach (var command in (string[][])[["jar", "1"], ["shop", "show"], ["can", "list"], ["verify"]])
        {
            Assert.Equal(Told(shop.Json(command)), Told(other.Json([.. command, "--shop", there])));
        }
    }

    [Fact]
    public void A_backup_that_is_none_leaves_no_folder_behind()
    {
        var file = Path.Combine(shop.Folder, "whole.db");
        File.WriteAllText(file, "no ledger");
        var there = Path.Combine(other.Folder, "there");
        Assert.StartsWith("error JL457", other.Run("restore", file, there).Errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(there));
    }

    [Fact]
    public void From_an_export_the_cans_are_missing_and_that_is_told()
    {
        var file = Path.Combine(shop.Folder, "shop.jsonl");
        shop.Json("export", file);
        var taken = other.Json("import", file);
        var told = Assert.Single(taken["warnings"]!.AsArray())!;
        Assert.Equal("JL429", told["code"]!.GetValue<string>());
        Assert.Contains("\"the-green-can\"", told["message"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Contains("the-green-can, unlisted", other.Run("jar", "1").Result, StringComparison.Ordinal);
    }

    private static string[] Texts(JsonNode? list) => [.. list!.AsArray().Select(one => one!.GetValue<string>())];

    private string Told(JsonObject said) => said.ToJsonString().Replace(shop.Folder, "", StringComparison.Ordinal).Replace(Path.Combine(other.Folder, "there"), "", StringComparison.Ordinal);
}
