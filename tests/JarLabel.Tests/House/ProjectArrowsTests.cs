using System.Xml.Linq;

namespace JarLabel.Tests.House;

public class ProjectArrowsTests
{
    /// <summary>Which room may lean on which, and on which package. Nothing points back. The table in DEVELOPERS.md says the same.</summary>
    private static readonly Dictionary<string, (string[] Rooms, string[] Packages)> Allowed = new()
    {
        ["JarLabel.Core"] = ([], ["UnitsNet"]),
        ["JarLabel.Layout"] = (["JarLabel.Core"], ["QRCoder"]),
        ["JarLabel.Render"] = (["JarLabel.Layout"], ["SkiaSharp", "HarfBuzzSharp", "SkiaSharp.NativeAssets.Linux.NoDependencies", "HarfBuzzSharp.NativeAssets.Linux", "ZXing.Net"]),
        ["JarLabel.Store"] = (["JarLabel.Core"], ["Microsoft.Data.Sqlite"]),
        ["JarLabel.Printing"] = (["JarLabel.Core"], []),
        ["JarLabel.Operations"] = (["JarLabel.Store", "JarLabel.Render", "JarLabel.Printing"], ["Sep"]),
        ["JarLabel.Web"] = (["JarLabel.Operations"], []),
        ["JarLabel.Cli"] = (["JarLabel.Operations", "JarLabel.Web", "JarLabel.Printing"], ["System.CommandLine"]),
    };

    public static TheoryData<string> Rooms => [.. Directory.EnumerateFiles(Path.Combine(Checkout.Root, "src"), "*.csproj", SearchOption.AllDirectories)];

    [Theory, MemberData(nameof(Rooms))]
    public void A_room_leans_only_on_the_rooms_and_packages_of_the_table(string project)
    {
        var room = Path.GetFileNameWithoutExtension(project);
        Assert.True(Allowed.TryGetValue(room, out var allowed), $"{room} is not in the table.");
        var items = XDocument.Load(project).Descendants().ToList();
        Assert.Equal(allowed.Rooms.Order(), Included(items, "ProjectReference").Select(Path.GetFileNameWithoutExtension).Order());
        Assert.Subset(allowed.Packages.ToHashSet(), Included(items, "PackageReference").ToHashSet());
    }

    [Fact]
    public void Every_room_of_the_table_is_there() =>
        Assert.Equal(Allowed.Keys.Order(), Rooms.Select(row => Path.GetFileNameWithoutExtension(row.Data)).Order());

    private static IEnumerable<string> Included(IEnumerable<XElement> items, string kind) =>
        items.Where(e => e.Name.LocalName == kind).Select(e => e.Attribute("Include")!.Value.Replace('\\', '/'));
}
