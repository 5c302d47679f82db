namespace JarLabel.Acceptance;

/// <summary>With <c>--dry-run</c> nothing happens, and nothing that is said sounds as if it had.</summary>
public sealed partial class RehearsalTests : IDisposable
{
    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    [Theory]
    [InlineData("mix --list list.csv")]
    [InlineData("mix --grade garnet --cut 1.5 --pour 350mL --solvent ethanol-95")]
    [InlineData("label 1")]
    [InlineData("label --all")]
    [InlineData("label --list jars.csv")]
    [InlineData("card 1")]
    [InlineData("note 1 strained")]
    [InlineData("thin 1 --to 1")]
    [InlineData("bag add --grade garnet --mass 500g --date 2025-10-01")]
    [InlineData("can add green --contains ethanol=95,water=5")]
    [InlineData("backup x.db")]
    [InlineData("restore standing.db --force")]
    [InlineData("export x.jsonl")]
    [InlineData("import standing.jsonl --shop other")]
    [InlineData("publish pocket")]
    [InlineData("calibrate --sheet letter-2x5-101.6x50.8 --dx 1")]
    [InlineData("calibrate --sheet letter-2x5-101.6x50.8 --forget")]
    [InlineData("designs --out x.pdf")]
    [InlineData("shelf --out x.pdf --ics x.ics")]
    [InlineData("notice")]
    [InlineData("sheet new")]
    [InlineData("shop set name Alder")]
    public void Nothing_is_told_as_done(string line)
    {
        shop.Json("mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95");
        shop.Json("backup", "standing.db");
        shop.Json("export", "standing.jsonl");
        File.WriteAllText(Path.Combine(shop.Folder, "list.csv"), "grade,cut,pour,solvent\ngarnet,1.5,350 mL,ethanol-95\ngarnet,2,350 mL,ethanol-95\n");
        File.WriteAllText(Path.Combine(shop.Folder, "jars.csv"), "jar\n1\n");
        var before = Files();

        var run = shop.Run([.. line.Split(' '), "--dry-run"]);

        Assert.Equal((0, ""), (run.ExitCode, run.Errors));
        Assert.Contains("Only worked out, as it would be: nothing is recorded, written or sent.", run.Result, StringComparison.Ordinal);
        Assert.DoesNotMatch(ToldAsDone(), run.Result);
        Assert.Equal(before, Files());
    }

    [GeneratedRegex(@"(?<!would be )\b(mixed|printed|copied|kept in|kept aside|kept  |done  )|\d (events (taken|are)|pages are)|  (dated anew|drawn at)")]
    private static partial Regex ToldAsDone();

    /// <summary>A lock that was taken leaves an empty file.</summary>
    private string[] Files() =>
    [
        .. Directory.EnumerateFiles(shop.Folder, "*", SearchOption.AllDirectories).Where(file => !file.EndsWith(".lock", StringComparison.Ordinal))
            .Select(file => $"{file} {Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(file)))}").Order(StringComparer.Ordinal),
    ];
}
