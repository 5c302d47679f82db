namespace JarLabel.Acceptance.Fuzz;

/// <summary>Thousands of command lines by chance, of a known seed. JARLABEL_LINES=N gives more, JARLABEL_SEED=N others.</summary>
public sealed class RandomLinesTests : IDisposable
{
    private const int Shops = 4;
    private readonly string folder = Directory.CreateTempSubdirectory("jarlabel-lines-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void No_line_that_anybody_could_type_ends_with_a_fault_of_ours()
    {
        var lines = new RandomLines(new Random(Setting("JARLABEL_SEED", 20261128)));
        for (var hand = 0; hand < 2; hand++)
        {
            var work = Directory.CreateDirectory(Path.Combine(folder, $"hand-{hand}", "work")).FullName;
            File.WriteAllText(Path.Combine(work, "list.csv"), "grade,solvent,cut,fill,jar\ngarnet,ethanol-95,2,250 mL,1\n");
            File.WriteAllText(Path.Combine(work, "job.json"), "[ { \"for\": \"pad\", \"area\": \"1 m2\", \"coats\": 3 } ]");
            File.WriteAllText(Path.Combine(work, "broken.json"), "[ { \"for\": \"\\ud800\" } ]");
        }

        for (var shop = 0; shop < Shops; shop++)
        {
            Directory.CreateDirectory(Path.Combine(folder, $"shop-{shop}"));
        }

        var count = Setting("JARLABEL_LINES", 3000);
        var codes = ManyLines.Run(folder, [.. Enumerable.Range(0, count).Select(i => (string[][])[[.. lines.Next(), "--shop", Path.Combine(folder, $"shop-{i % Shops}")]])]);
        Assert.All(codes, code => Assert.True(Assert.Single(code) is 0 or 1 or 2));
        Assert.InRange(codes.Count(code => code[0] == 0), count / 20, count);
    }

    private static int Setting(string name, int usual) => int.Parse(Environment.GetEnvironmentVariable(name) ?? usual.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
