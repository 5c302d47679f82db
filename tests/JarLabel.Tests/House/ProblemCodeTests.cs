namespace JarLabel.Tests.House;

public partial class ProblemCodeTests
{
    [Fact]
    public void A_problem_code_belongs_to_one_room()
    {
        var shared = Directory.EnumerateFiles(Path.Combine(Checkout.Root, "src"), "*.cs", SearchOption.AllDirectories)
            .Where(f => f.EndsWith("Problems.cs", StringComparison.Ordinal) || f.EndsWith("Cautions.cs", StringComparison.Ordinal))
            .SelectMany(f => Codes().Matches(File.ReadAllText(f)).Select(m => (Code: m.Value, File: Path.GetFileName(f))))
            .Distinct()
            .GroupBy(c => c.Code)
            .Where(g => g.Count() > 1)
            .Select(g => $"{g.Key}: {string.Join(", ", g.Select(c => c.File))}");
        Assert.Empty(shared);
    }

    [Fact]
    public void Every_code_is_provoked_by_a_test()
    {
        var tests = string.Concat(Directory.EnumerateFiles(Path.Combine(Checkout.Root, "tests"), "*Tests.cs", SearchOption.AllDirectories).Where(file => Path.GetFileName(file) != "ProblemCodeTests.cs").Select(File.ReadAllText));
        var known = Directory.EnumerateFiles(Path.Combine(Checkout.Root, "src"), "*.cs", SearchOption.AllDirectories)
            .Where(file => !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .SelectMany(file => Codes().Matches(File.ReadAllText(file)).Select(match => match.Value.Trim('"')))
            .Distinct()
            .Order(StringComparer.Ordinal);
        Assert.All(known, code => Assert.Contains(code, tests, StringComparison.Ordinal));
    }

    [GeneratedRegex("\"JL[1-6][0-9]{2}\"")]
    private static partial Regex Codes();
}
