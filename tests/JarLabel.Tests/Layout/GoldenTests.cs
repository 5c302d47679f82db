namespace JarLabel.Tests.Layout;

/// <summary>Every design with the least, the usual and the most to say, as it was looked at and found good. A test only compares. After a
/// wanted change, look at the pictures, then run once with <c>JARLABEL_GOLDENS=write</c> and put who looked, when and at what in the first line:
/// <c>JARLABEL_GOLDENS=write JARLABEL_LOOKED="name, day, at what" dotnet run --project tests/JarLabel.Tests -- --filter-class "*GoldenTests"</c>.</summary>
public class GoldenTests
{
    public static TheoryData<string, string> Cases() =>
        [.. LayoutFiles.Ours.DesignIds.SelectMany(design => SampleLabels.For(design).Keys.Select(sample => (design, sample)))];

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_design_is_set_as_it_was_looked_at(string design, string sample)
    {
        var set = Set(design, sample).ToList();
        var path = Path.Combine(Folder(), $"{design}-{sample}.txt");
        if (Environment.GetEnvironmentVariable("JARLABEL_GOLDENS") == "write")
            File.WriteAllLines(path, set.Prepend($"looked: {Environment.GetEnvironmentVariable("JARLABEL_LOOKED") ?? throw new InvalidOperationException("Who looked, when, at what?")}"));
        var golden = File.ReadAllLines(path);
        Assert.StartsWith("looked: ", golden[0], StringComparison.Ordinal);
        Assert.Equal(golden.Skip(1), set);
    }

    [Fact]
    public void There_is_no_golden_without_its_design() => Assert.Equal(
        Cases().Select(row => $"{row.Data.Item1}-{row.Data.Item2}").Order(StringComparer.Ordinal),
        Directory.GetFiles(Folder(), "*.txt").Select(Path.GetFileNameWithoutExtension).Order(StringComparer.Ordinal));

    private static IEnumerable<string> Set(string id, string sample)
    {
        var design = LayoutFiles.Design(id);
        var area = new LabelArea(design.Shape, 0, 0, design.Width, design.Height, 300);
        return MarkText.Of(Composer.Place(SampleLabels.For(id)[sample], design, area, new SkiaRuler()));
    }

    private static string Folder() => Path.Combine(Checkout.Root, "tests", "JarLabel.Tests", "Layout", "Goldens");
}
