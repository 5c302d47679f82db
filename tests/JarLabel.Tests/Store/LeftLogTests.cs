namespace JarLabel.Tests.Store;

/// <summary>What a killed program leaves beside the ledger: taken when it belongs to it, and never otherwise.</summary>
public sealed class LeftLogTests
{
    [Theory]
    [InlineData(LedgerMode.Read)]
    [InlineData(LedgerMode.Write)]
    public void The_ledgers_own_log_is_taken(LedgerMode mode)
    {
        using var shop = new CrashedShop(jars: 20, logged: 5);
        Ledger.Open(shop.Folder, mode, new PlainJars()).Require().Dispose();
        Assert.Equal(25, shop.LastJar());
        Assert.False(File.Exists(shop.Folder.Ledger + "-wal"));
    }

    [Theory]
    [InlineData(2, 3)]
    [InlineData(20, 5)]
    [InlineData(60, 1)]
    public void A_backup_put_beside_the_log_of_the_ledger_before_it_is_left_as_it_is(int jars, int logged)
    {
        using var shop = new CrashedShop(jars, logged);
        File.Copy(shop.Backup, shop.Folder.Ledger, overwrite: true);
        var before = shop.Bytes();
        foreach (var mode in Enum.GetValues<LedgerMode>())
        {
            Assert.Equal("JL452", shop.Refused(mode));
        }

        Assert.Equal(before, shop.Bytes());
    }

    [Fact]
    public void The_log_of_another_shop_is_left_as_it_is()
    {
        using var shop = new CrashedShop(jars: 20, logged: 5);
        using var other = new TempShop();
        using (var ledger = other.Open())
        {
            for (var jar = 0; jar < 20; jar++)
            {
                BenchWork.Thin(ledger, BenchWork.Mix(ledger, keeps: 500 + jar).Require()).Require();
            }
        }

        File.Copy(other.Folder.Ledger, shop.Folder.Ledger, overwrite: true);
        var before = shop.Bytes();
        Assert.Equal("JL452", shop.Refused(LedgerMode.Read));
        Assert.Equal("JL452", shop.Refused(LedgerMode.Write));
        Assert.Equal(before, shop.Bytes());
    }

    /// <summary>A later state of the same ledger, in write-ahead mode itself: only its events tell that the log is older.</summary>
    [Fact]
    public void An_older_log_of_the_same_ledger_is_not_taken()
    {
        using var shop = new CrashedShop(jars: 30, logged: 2);
        var log = File.ReadAllBytes(shop.Folder.Ledger + "-wal");
        using (var ledger = Ledger.Open(shop.Folder, LedgerMode.Write, new PlainJars()).Require())
        {
            for (var more = 0; more < 10; more++)
            {
                BenchWork.Mix(ledger).Require();
            }
        }

        File.WriteAllBytes(shop.Folder.Ledger + "-wal", log);
        var before = shop.Bytes();
        Assert.Equal("JL452", shop.Refused(LedgerMode.Write));
        Assert.Equal("JL452", shop.Refused(LedgerMode.Read));
        Assert.Equal(before, shop.Bytes());
    }

    [Fact]
    public void Two_who_look_at_once_both_leave_it()
    {
        using var shop = new CrashedShop(jars: 40, logged: 5);
        File.Copy(shop.Backup, shop.Folder.Ledger, overwrite: true);
        var before = shop.Bytes();
        Parallel.For(0, 40, turn => Assert.Equal("JL452", shop.Refused(turn % 2 == 0 ? LedgerMode.Read : LedgerMode.Write)));
        Assert.Equal(before, shop.Bytes());
    }

    [Fact]
    public void A_newer_ledger_with_a_log_is_left_as_it_is()
    {
        using var shop = new CrashedShop(jars: 3, logged: 2, sql: "PRAGMA user_version = 99");
        var before = shop.Bytes();
        Assert.Equal("JL411", shop.Refused(LedgerMode.Read));
        Assert.Equal("JL411", shop.Refused(LedgerMode.Write));
        Assert.Equal(before, shop.Bytes());
    }

    [Fact]
    public void A_damaged_ledger_with_a_log_is_read_as_far_as_it_goes_and_left_as_it_is()
    {
        using var shop = new CrashedShop(jars: 20, logged: 2, sqlBefore: "DROP TRIGGER events_stay; UPDATE events SET body = replace(body, '402.5', '802.5') WHERE number = 4");
        var before = shop.Bytes();
        Assert.Equal("JL410", shop.Refused(LedgerMode.Write));
        using (var ledger = Ledger.Open(shop.Folder, LedgerMode.Read, new PlainJars()).Require())
        {
            Assert.Equal(2, ledger.Look(view => view.EventsOf(Subject.Jar(22)).Count).Require());
            Assert.Equal("JL418", ledger.Look(view => view.EventsOf(Subject.Jar(4)).Count).Problems.Single().Code);
            Assert.Contains(ledger.Verify().Require().Damage, problem => problem.Code == "JL418");
        }

        Assert.Equal(before, shop.Bytes());
    }

    /// <summary>A log that holds what was never recorded is not told from that of another ledger; neither is taken.</summary>
    [Fact]
    public void A_log_that_was_rewritten_is_left_as_it_is()
    {
        using var shop = new CrashedShop(jars: 3, logged: 2, sql: "DROP TRIGGER events_stay; UPDATE events SET body = replace(body, '402.5', '802.5') WHERE sequence = 5");
        var before = shop.Bytes();
        Assert.Equal("JL452", shop.Refused(LedgerMode.Write));
        Assert.Equal("JL452", shop.Refused(LedgerMode.Read));
        Assert.Equal(before, shop.Bytes());
    }

    [Fact]
    public void A_linked_ledger_is_the_file_it_leads_to()
    {
        using var shop = TempShop.With(jars: 2);
        var real = shop.Beside("real.db");
        File.Move(shop.Folder.Ledger, real);
        File.CreateSymbolicLink(shop.Folder.Ledger, real);
        using (var ledger = shop.Open())
        {
            Assert.Equal(3, BenchWork.Mix(ledger).Require());
        }

        Assert.True(shop.Verify().Sound);
        Assert.NotNull(new FileInfo(shop.Folder.Ledger).LinkTarget);
        File.Delete(real);
        Assert.Equal("JL420", Ledger.Open(shop.Folder, LedgerMode.Write, new PlainJars()).Problems.Single().Code);
    }
}
