namespace JarLabel.Tests.House;

public class FileSizeTests
{
    private const int LongestFile = 300;

    [Fact]
    public void No_source_file_is_too_long_to_be_read_at_one_sitting()
    {
        var tooLong = Sources().Where(f => File.ReadLines(f).Count() > LongestFile).Select(f => Path.GetRelativePath(Checkout.Root, f));
        Assert.Empty(tooLong);
    }

    [Fact]
    public void A_file_is_named_after_a_type_in_it()
    {
        var misnamed = Sources()
            .Where(f => Path.GetFileName(f) is not ("Program.cs" or "GlobalUsings.cs"))
            .Where(f => !File.ReadAllText(f).Contains(Path.GetFileNameWithoutExtension(f), StringComparison.Ordinal))
            .Select(f => Path.GetRelativePath(Checkout.Root, f));
        Assert.Empty(misnamed);
    }

    private static IEnumerable<string> Sources() => Directory
        .EnumerateFiles(Path.Combine(Checkout.Root, "src"), "*.cs", SearchOption.AllDirectories)
        .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal));
}
