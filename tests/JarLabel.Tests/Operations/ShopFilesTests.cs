namespace JarLabel.Tests.Operations;

/// <summary>The shop's own data files where one of them cannot be read.</summary>
public sealed class ShopFilesTests : IDisposable
{
    private readonly BenchShop shop = new();

    public void Dispose() => shop.Dispose();

    [Theory]
    [InlineData("catalog")]
    [InlineData("layouts/sheets")]
    [InlineData("layouts/labels")]
    public void A_file_that_cannot_be_read_is_told_with_its_folder_and_nothing_goes_on_without_it(string folder)
    {
        var (bench, before) = (shop.Open(), shop.Recorded);
        var place = Directory.CreateDirectory(Path.Combine(bench.Folder.Path, folder)).FullName;
        var link = Path.Combine(place, "own.json");
        File.CreateSymbolicLink(link, Path.Combine(place, "gone"));
        var problem = Assert.Single((folder == "catalog" ? Opened(bench) : Labelled(bench)).Problems);
        Assert.Equal(("JL221", place), (problem.Code, problem.Where));
        Assert.Contains("cannot be read", problem.Message, StringComparison.Ordinal);
        File.Delete(link);
        Assert.Equal(before, shop.Recorded);
        Assert.True(Labelled(shop.Open()).Ok);
    }

    private static Result<bool> Opened(Workbench bench) =>
        Workbench.Open(new WorkbenchOptions(bench.Folder.Path, bench.Now), _ => null).Then<bool>(_ => true);

    private static Result<bool> Labelled(Workbench bench) =>
        LabelJar.Do(bench, JarNumber.From(1), new LabelChoice(), null).Then<bool>(_ => true);
}
