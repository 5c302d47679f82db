using JarLabel.Store.Exchange;

namespace JarLabel.Tests.Store;

/// <summary>The whole shop in one file, and back from it on another machine.</summary>
public sealed class WholeShopTests : IDisposable
{
    private static readonly string[] Written = ["calibration.json", "catalog/solvents.json", "layouts/labels/own.json", "layouts/sheets/own.json", "shop.json"];
    private static readonly string[] Files = [.. Written[..2], "labels/1.pdf", "labels/2.pdf", "labels/3.pdf", .. Written[2..]];

    private readonly TempShop shop = TempShop.With(jars: 3);
    private readonly string backup;

    public WholeShopTests()
    {
        backup = shop.Beside("whole.db");
        foreach (var file in Written)
        {
            Write(shop.Folder, file, $"{{\"of\": \"{file}\"}}");
        }
    }

    public void Dispose() => shop.Dispose();

    [Fact]
    public void What_the_shop_wrote_itself_comes_back_in_a_new_folder_byte_for_byte()
    {
        Assert.Equal(Files, Taken().Files);
        var there = New("there");
        var report = Put(there).Require();
        Assert.Equal(Files, report.Brought);
        Assert.Empty(report.Stayed);
        Assert.All(Files, file => Assert.Equal(File.ReadAllBytes(shop.Folder.Full(file)), File.ReadAllBytes(there.Full(file))));
        using var ledger = Ledger.Open(there, LedgerMode.Write, new PlainJars()).Require();
        Assert.Empty(ledger.Verify().Require().Damage);
        Assert.Equal(4, BenchWork.Mix(ledger, keeps: 100).Require());
    }

    /// <summary>The ledger that comes back is as small as it was, and is backed up again like any other.</summary>
    [Fact]
    public void The_ledger_that_comes_back_carries_no_files_itself()
    {
        Write(shop.Folder, "catalog/solvents.json", new string(' ', 1_000_000));
        Taken();
        var there = New("there");
        Put(there).Require();
        OutsideProgram.Need("sqlite3");
        Assert.Equal("0", OutsideProgram.Run("sqlite3", there.Ledger, "SELECT count(*) FROM sqlite_schema WHERE name = 'shop_files'").Said.Trim());
        Assert.True(new FileInfo(there.Ledger).Length < 500_000);
        using var ledger = Ledger.Open(there, LedgerMode.Read, new PlainJars()).Require();
        Assert.Equal(Files, ledger.Backup(shop.Beside("again.db")).Require().Files);
    }

    [Fact]
    public void What_stands_there_stays_and_is_named()
    {
        Taken();
        var there = New("there");
        Write(there, "shop.json", "{}");
        Write(there, "catalog/solvents.json", "{\"of\": \"catalog/solvents.json\"}");
        var report = Put(there).Require();
        Assert.Equal(["shop.json"], report.Stayed);
        Assert.Equal(Files.Except(["shop.json", "catalog/solvents.json"]), report.Brought);
        Assert.Equal("{}", File.ReadAllText(there.Settings));
    }

    [Fact]
    public void What_was_printed_and_changed_since_is_left_out()
    {
        File.WriteAllText(shop.Folder.Full("labels/2.pdf"), "scribbled over");
        Assert.Equal(Files.Except(["labels/2.pdf"]), Taken().Files);
    }

    [Fact]
    public void A_rehearsal_names_them_and_brings_none()
    {
        Taken();
        var there = New("there");
        Assert.Equal(Files, Put(there, dryRun: true).Require().Brought);
        Assert.False(Directory.Exists(there.Path));
    }

    [Fact]
    public void A_backup_put_in_place_by_hand_is_a_ledger_and_is_backed_up_again()
    {
        Taken();
        var there = New("there");
        Directory.CreateDirectory(there.Path);
        File.Copy(backup, there.Ledger);
        using var ledger = Ledger.Open(there, LedgerMode.Write, new PlainJars()).Require();
        Assert.Equal(4, BenchWork.Mix(ledger, keeps: 100).Require());
        Assert.Equal(["labels/4.pdf"], ledger.Backup(shop.Beside("again.db")).Require().Files);
    }

    [Fact]
    public void A_backup_of_an_earlier_version_has_none()
    {
        Taken();
        OutsideProgram.Need("sqlite3");
        OutsideProgram.Run("sqlite3", backup, "DROP TABLE shop_files");
        Assert.Empty(Put(New("there")).Require().Brought);
    }

    [Theory]
    [InlineData("UPDATE shop_files SET bytes = x'7b7d' WHERE path = 'shop.json'")]
    [InlineData("UPDATE shop_files SET path = '../shop.json' WHERE path = 'shop.json'")]
    [InlineData("UPDATE shop_files SET path = '/etc/jarlabel' WHERE path = 'shop.json'")]
    [InlineData("UPDATE shop_files SET path = 'devices.json' WHERE path = 'shop.json'")]
    [InlineData("UPDATE shop_files SET path = 'ledger.db' WHERE path = 'shop.json'")]
    [InlineData("UPDATE shop_files SET path = 'catalog/../shop.json' WHERE path = 'shop.json'")]
    [InlineData("UPDATE shop_files SET path = 'catalog/a\\b.json' WHERE path = 'shop.json'")]
    [InlineData("UPDATE shop_files SET path = 'labels/.hidden.pdf' WHERE path = 'shop.json'")]
    [InlineData("DROP TABLE shop_files; CREATE TABLE shop_files (name TEXT); INSERT INTO shop_files VALUES ('shop.json')")]
    public void One_that_was_changed_or_leads_elsewhere_is_refused_whole(string change)
    {
        Taken();
        OutsideProgram.Need("sqlite3");
        OutsideProgram.Run("sqlite3", backup, change);
        var there = New("there");
        Assert.Equal("JL457", Put(there).Problems[0].Code);
        Assert.False(File.Exists(there.Settings) || File.Exists(there.Ledger) || File.Exists(Path.Combine(there.Path, "..", "shop.json")));
    }

    private BackupReport Taken()
    {
        using var ledger = shop.Open(LedgerMode.Read);
        return ledger.Backup(backup).Require();
    }

    private ShopFolder New(string name) => ShopFolder.At(shop.Beside(name)).Require();

    private Result<RestoreReport> Put(ShopFolder folder, bool dryRun = false) =>
        Restore.Do(folder, new RestoreWish(backup, new DateTime(2026, 3, 9, 14, 30, 0), DryRun: dryRun), new PlainJars());

    private static void Write(ShopFolder folder, string file, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(folder.Full(file))!);
        File.WriteAllText(folder.Full(file), text);
    }
}
