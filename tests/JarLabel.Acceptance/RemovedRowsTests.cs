namespace JarLabel.Acceptance;

/// <summary>Jars, bags and bottles of a grade and an alcohol whose rows the shop took out of its catalog.</summary>
public sealed class RemovedRowsTests : IDisposable
{
    private const string Can =
        """[{ "id": "green-can", "name": "the green can", "shortName": "green can", "source": "practice", "contains": [{ "ethanolByVolume": 95 }] }]""";

    private const string Attic =
        """[{ "id": "attic", "name": "attic find", "color": "brown", "darkness": 5, "waxy": false, "keeping": "dewaxed", "form": "flake", "note": "old tin", "source": "practice" }]""";

    private readonly Shop shop = new();

    public RemovedRowsTests()
    {
        var catalog = Directory.CreateDirectory(Path.Combine(shop.Folder, "catalog")).FullName;
        File.WriteAllText(Path.Combine(catalog, "solvents.json"), Can);
        File.WriteAllText(Path.Combine(catalog, "grades.json"), Attic);
        shop.Json("bag", "add", "--grade", "attic", "--mass", "500 g", "--date", "2026-03-01");
        shop.Json("bottle", "add", "--solvent", "green-can", "--volume", "1 L", "--date", "2026-03-01");
        shop.Json("mix", "--bag", "1", "--cut", "2", "--pour", "200 mL", "--bottle", "1", "--container", "500 mL", "--at", "2026-03-09");
        Directory.Delete(catalog, recursive: true);
    }

    public void Dispose() => shop.Dispose();

    [Theory]
    [InlineData("jar", "1")]
    [InlineData("label", "1")]
    [InlineData("label", "--all")]
    [InlineData("card", "1")]
    [InlineData("use", "1", "10 mL")]
    [InlineData("thin", "1", "--to", "1.5")]
    [InlineData("thicken", "1", "--to", "2.5")]
    [InlineData("decant", "1", "--into", "50 mL")]
    [InlineData("notice")]
    [InlineData("shelf")]
    [InlineData("scan", "1")]
    [InlineData("bag", "list")]
    [InlineData("bottle", "list")]
    [InlineData("undo", "1")]
    public void Everything_goes_on(params string[] command)
    {
        var run = shop.Run(command);
        Assert.True(run.ExitCode == 0, run.Errors);
    }

    [Fact]
    public void The_jar_says_so_and_answers_for_the_worst_that_is_sold()
    {
        var shown = shop.Run("jar", "1").Result;
        Assert.Contains("Attic, unlisted in green-can, unlisted", shown, StringComparison.Ordinal);
        Assert.Contains("Toxic if swallowed", shown, StringComparison.Ordinal);
        var again = shop.Run("mix", "--grade", "attic", "--cut", "2", "--pour", "200 mL", "--solvent", "green-can");
        Assert.Equal(2, again.ExitCode);
    }
}
