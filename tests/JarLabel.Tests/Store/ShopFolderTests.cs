namespace JarLabel.Tests.Store;

public sealed class ShopFolderTests
{
    [Fact]
    public void The_option_comes_before_the_environment_and_that_before_the_platforms_place()
    {
        using var shop = new TempShop();
        Assert.Equal(shop.Beside("one"), ShopFolder.Find(shop.Beside("one"), _ => shop.Beside("two")).Require().Path);
        Assert.Equal(shop.Beside("two"), ShopFolder.Find(null, name => name == "JARLABEL_SHOP" ? shop.Beside("two") : null).Require().Path);
        var usual = ShopFolder.Find(" ", _ => null).Require();
        Assert.EndsWith(Path.DirectorySeparatorChar + "jarlabel", usual.Path, StringComparison.Ordinal);
        Assert.False(usual.IsNamed);
    }

    [Fact]
    public void A_file_in_place_of_the_folder_is_told()
    {
        using var shop = new TempShop();
        File.WriteAllText(shop.Beside("file"), "");
        var problem = ShopFolder.Find(shop.Beside("file"), _ => null).Problems.Single();
        Assert.Equal(("JL407", shop.Beside("file")), (problem.Code, problem.Where));
    }

    [Fact]
    public void A_folder_below_a_file_is_told()
    {
        using var shop = new TempShop();
        File.WriteAllText(shop.Beside("file"), "");
        var folder = ShopFolder.At(shop.Beside("file/shop")).Require();
        Assert.Equal("JL402", Ledger.Open(folder, LedgerMode.Write, new PlainJars()).Problems.Single().Code);
    }

    [Fact]
    public void A_mistyped_folder_is_told_when_looking_and_made_when_recording()
    {
        using var shop = new TempShop();
        Assert.Equal("JL405", Ledger.Open(shop.Folder, LedgerMode.Read, new PlainJars()).Problems.Single().Code);
        shop.Open().Dispose();
        Assert.Equal(
            ["catalog", "labels", "layouts", "ledger.db", "staging"],
            Directory.EnumerateFileSystemEntries(shop.Folder.Path).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_shop_that_is_moved_keeps_its_files()
    {
        using var shop = TempShop.With(jars: 2);
        Directory.Move(shop.Folder.Path, shop.Beside("moved"));
        using var ledger = Ledger.Open(ShopFolder.At(shop.Beside("moved")).Require(), LedgerMode.Read, new PlainJars()).Require();
        var report = ledger.Verify().Require();
        Assert.Equal((2, 0), (report.Files, report.Notices.Count));
    }
}
