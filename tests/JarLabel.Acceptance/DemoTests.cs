namespace JarLabel.Acceptance;

/// <summary>The invented shop that <c>demo</c> builds.</summary>
public sealed class DemoTests : IDisposable
{
    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public void It_prints_the_same_every_time_and_its_record_is_sound()
    {
        var first = shop.Json("demo", "one");
        shop.Json("demo", "two");
        var files = Printed("one");
        Assert.Equal(files, Printed("two"));
        Assert.Equal(first["files"]!.AsArray().Count, files.Count);
        Assert.Equal("", shop.Run("verify", "--shop", "one").Errors);
        var shelf = shop.Json("shelf", "--shop", "one", "--at", first["until"]!.GetValue<string>());
        Assert.InRange(shelf["jars"]!.AsArray().Count, 10, 13);
        Assert.Equal(["bench", "cellar"], shelf["shelves"]!.AsArray().Select(s => s!["shelf"]!.GetValue<string>()));
        Assert.Superset(new HashSet<string> { "dissolving", "good", "test", "past" }, shelf["jars"]!.AsArray().Select(j => j!["state"]!.GetValue<string>()).ToHashSet());
        Assert.Equal("8-6", shop.Json("scan", Path.Combine("one", "previews", "label.png"), "--shop", "one")["jar"]!["id"]!.GetValue<string>());
    }

    [Fact]
    public void Its_shelf_in_a_pipe_stands_in_columns_whatever_its_fractions()
    {
        var until = shop.Json("demo", "one")["until"]!.GetValue<string>();
        var rows = shop.Run("shelf", "--shop", "one", "--at", until).Result.Split('\n').SkipWhile(line => !line.StartsWith("  jar", StringComparison.Ordinal)).TakeWhile(line => line.Length > 0).ToArray();
        Assert.Contains(rows, row => row.Contains(" 1 1/2 lb ", StringComparison.Ordinal));
        var grade = rows[0].IndexOf("grade", StringComparison.Ordinal);
        Assert.All(rows, row => Assert.Matches(@"^ {3}\w", row[(grade - 3)..]));
    }

    [Fact]
    public void It_touches_no_folder_that_holds_something()
    {
        Directory.CreateDirectory(Path.Combine(shop.Folder, "full"));
        File.WriteAllText(Path.Combine(shop.Folder, "full", "recipe.txt"), "mine");
        Assert.StartsWith("error JL199", shop.Run("demo", "full").Errors, StringComparison.Ordinal);
        Assert.StartsWith("error JL130", shop.Run("demo", "new", "--dry-run").Errors, StringComparison.Ordinal);
        Assert.Equal([Path.Combine(shop.Folder, "full", "recipe.txt")], Directory.GetFiles(Path.Combine(shop.Folder, "full")));
        Assert.False(Directory.Exists(Path.Combine(shop.Folder, "new")));
    }

    private List<string> Printed(string folder) =>
    [
        .. Directory.EnumerateFiles(Path.Combine(shop.Folder, folder), "*", SearchOption.AllDirectories)
            .Where(f => Path.GetExtension(f) is ".pdf" or ".png")
            .Order(StringComparer.Ordinal)
            .Select(f => $"{Path.GetRelativePath(Path.Combine(shop.Folder, folder), f)} {Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(f)))}"),
    ];
}
