namespace JarLabel.Tests.Store;

public sealed class DiskTests
{
    [Theory]
    [InlineData("300k")]
    [InlineData("512k")]
    [InlineData("700k")]
    [InlineData("1m")]
    public void A_full_disk_is_told_and_every_accepted_step_is_whole(string size)
    {
        using var disk = new SmallDisk(size);
        var folder = ShopFolder.At(Path.Combine(disk.Path, "shop")).Require();
        using (var ledger = Ledger.Open(folder, LedgerMode.Write, new PlainJars()).Require())
        {
            var (jars, problem) = MixUntilFull(ledger);
            Assert.Contains(problem.Code, (string[])["JL414", "JL416"]);
            Assert.Contains("nothing was recorded", problem.Message, StringComparison.Ordinal);
            Assert.Equal(jars, ledger.Look(view => view.LastNumber(SubjectKind.Jar)).Require());
            Assert.Equal(jars, Directory.EnumerateFiles(folder.Labels, "*.pdf").Count());
        }

        disk.Remount("size=4m");
        using var again = Ledger.Open(folder, LedgerMode.Write, new PlainJars()).Require();
        Assert.Equal(BenchWork.Mix(again).Require(), Directory.EnumerateFileSystemEntries(folder.Labels).Count());
        Assert.Empty(Directory.EnumerateFileSystemEntries(Path.Combine(folder.Path, "staging")));
        var report = again.Verify().Require();
        Assert.Empty(report.Damage);
        Assert.Empty(report.Notices);
    }

    [Fact]
    public void A_new_shop_on_a_full_disk_is_told_and_leaves_no_half_ledger()
    {
        using var disk = new SmallDisk("32k");
        var folder = ShopFolder.At(Path.Combine(disk.Path, "shop")).Require();
        var opened = Ledger.Open(folder, LedgerMode.Write, new PlainJars());
        Assert.False(opened.Ok);
        Assert.Equal("JL414", opened.Problems.Single().Code);
        Assert.False(File.Exists(folder.Ledger));
        Assert.Empty(Directory.EnumerateFiles(folder.Path, "*", SearchOption.AllDirectories));
    }

    /// <summary>The database says of it only that there was an error of input or output.</summary>
    [Fact]
    public void A_disk_without_room_for_the_list_of_the_log_is_told_as_full()
    {
        using var disk = new SmallDisk("4m");
        var folder = ShopFolder.At(Path.Combine(disk.Path, "shop")).Require();
        using (var ledger = Ledger.Open(folder, LedgerMode.Write, new PlainJars()).Require())
        {
            BenchWork.Mix(ledger).Require();
        }

        Close(disk, "full");
        Assert.Equal("JL414", Ledger.Open(folder, LedgerMode.Write, new PlainJars()).Problems.Single().Code);
        Directory.GetFiles(disk.Path, "filler").ToList().ForEach(File.Delete);
        using var again = Ledger.Open(folder, LedgerMode.Write, new PlainJars()).Require();
        Assert.Equal(2, BenchWork.Mix(again).Require());
    }

    [Fact]
    public void A_read_only_shop_can_be_looked_into_and_refuses_to_record()
    {
        using var disk = new SmallDisk("4m");
        var folder = ShopFolder.At(Path.Combine(disk.Path, "shop")).Require();
        using (var ledger = Ledger.Open(folder, LedgerMode.Write, new PlainJars()).Require())
        {
            BenchWork.Mix(ledger).Require();
        }

        disk.Remount("ro");
        using (var looking = Ledger.Open(folder, LedgerMode.Read, new PlainJars()).Require())
        {
            Assert.Equal("Mixed", looking.Look(view => view.EventsOf(Subject.Jar(1))[0].Kind).Require());
            Assert.True(looking.Verify().Require().Sound);
        }

        var refused = Ledger.Open(folder, LedgerMode.Write, new PlainJars());
        Assert.Equal("JL403", refused.Problems.Single().Code);
        Assert.Equal("JL406", ShopSettingsFile.Write(folder, new ShopSettings()).Problems.Single().Code);
    }

    /// <summary>As a killed program leaves it, with and without the shared list of the log, and as a copier leaves it that takes neither.</summary>
    [Theory]
    [InlineData("full", "ledger.db-wal", "ledger.db-shm")]
    [InlineData("full", "ledger.db-wal")]
    [InlineData("full")]
    [InlineData("read-only", "ledger.db-wal", "ledger.db-shm")]
    [InlineData("read-only", "ledger.db-wal")]
    [InlineData("read-only")]
    public void Where_nothing_can_be_written_all_can_be_read_and_copied_to_another_disk(string disk, params string[] left)
    {
        using var small = new SmallDisk("4m");
        using var shop = new CrashedShop(jars: 20, logged: 5, Path.Combine(small.Path, "shop"));
        foreach (var end in (string[])["ledger.db-wal", "ledger.db-shm"])
        {
            if (!left.Contains(end))
            {
                File.Delete(Path.Combine(shop.Folder.Path, end));
            }
        }

        Close(small, disk);
        var before = shop.Bytes();
        var since = System.Diagnostics.Stopwatch.GetTimestamp();
        using (var ledger = Ledger.Open(shop.Folder, LedgerMode.Read, new PlainJars()).Require())
        {
            Assert.Equal(left.Length > 0 ? 25 : 20, ledger.Look(view => view.EventsOf(SubjectKind.Jar).Max(row => row.Of.Number)).Require());
            Assert.Equal(left.Length > 0 ? 90 : 80, ledger.Backup(shop.Beside("copy.db")).Require().Events);
            Assert.Equal(left.Length > 0 ? 90 : 80, ledger.Export(shop.Beside("events.jsonl")).Require().Events);
            Assert.Empty(ledger.Verify().Require().Damage);
        }

        Assert.True(System.Diagnostics.Stopwatch.GetElapsedTime(since) < TimeSpan.FromSeconds(5));
        if (disk == "read-only")
        {
            Assert.Equal(before, shop.Bytes());
        }
    }

    /// <summary>As after an update of the program, on a stick whose switch forbids writing.</summary>
    [Fact]
    public void A_list_of_jars_that_must_be_made_anew_is_told_where_nothing_can_be_written()
    {
        using var disk = new SmallDisk("4m");
        var folder = ShopFolder.At(Path.Combine(disk.Path, "shop")).Require();
        using (var ledger = Ledger.Open(folder, LedgerMode.Write, new PlainJars()).Require())
        {
            BenchWork.Mix(ledger).Require();
        }

        disk.Remount("ro");
        var problem = Assert.Single(Ledger.Open(folder, LedgerMode.Read, new PlainJars(version: 2)).Problems);
        Assert.Equal(("JL422", folder.Ledger), (problem.Code, problem.Where));
        Assert.Contains("Copy the shop to a place where it can", problem.Message, StringComparison.Ordinal);
        disk.Remount("rw");
        using var again = Ledger.Open(folder, LedgerMode.Read, new PlainJars(version: 2)).Require();
        Assert.Equal(2, again.Look(view => view.EventCount).Require());
    }

    /// <summary>A file with a hole: it says that it is as long, and takes no room.</summary>
    [Fact]
    public void A_ledger_with_a_log_that_no_memory_holds_is_told_where_nothing_can_be_written()
    {
        using var disk = new SmallDisk("4m");
        using var shop = new CrashedShop(jars: 2, logged: 1, Path.Combine(disk.Path, "shop"));
        using (var file = File.OpenWrite(shop.Folder.Ledger))
        {
            file.SetLength(3L << 30);
        }

        disk.Remount("ro");
        var problem = Assert.Single(Ledger.Open(shop.Folder, LedgerMode.Read, new PlainJars()).Problems);
        Assert.Equal(("JL453", shop.Folder.Ledger), (problem.Code, problem.Where));
        Assert.Contains("Copy the shop to a place that can be written", problem.Message, StringComparison.Ordinal);
    }

    /// <summary>A bad spot of the disk, as <c>strace</c> puts it before the program: a write or the flush of the ledger's log fails.</summary>
    [Theory]
    [InlineData("pwrite64", "JL415", "nothing was recorded")]
    [InlineData("fsync,fdatasync", "JL485", "nobody can tell whether it has the step")]
    public void A_disk_that_fails_while_a_step_is_recorded_is_told_and_the_ledger_stays_whole(string call, string code, string says)
    {
        OutsideProgram.Need("strace");
        using var shop = TempShop.With(jars: 1);
        var (ended, said) = OutsideProgram.Run("strace", ["-f", "-qq", "-o", "/dev/null", "-P", shop.Folder.Ledger + "-wal", "-e", "trace=" + call, "-e", $"inject={call}:error=EIO:when=1+", "dotnet", "exec", OutsideProgram.Hand, "work", shop.Folder.Path, "1", "60"]);
        Assert.SkipWhen(said.Contains("ptrace", StringComparison.Ordinal), "This system lets no process trace another.");
        Assert.Equal(2, ended);
        Assert.StartsWith($"problem {code} ", said, StringComparison.Ordinal);
        Assert.Contains(says, said, StringComparison.Ordinal);
        Assert.DoesNotContain("mixed", said, StringComparison.Ordinal);
        using var ledger = shop.Open();
        var recorded = ledger.Look(view => view.EventCount).Require();
        Assert.Contains(recorded, code == "JL415" ? (long[])[4] : [4, 6]);
        Assert.Empty(ledger.Verify().Require().Damage);
        Assert.Equal(recorded == 4 ? 2 : 3, BenchWork.Mix(ledger).Require());
    }

    private static void Close(SmallDisk disk, string how)
    {
        if (how == "read-only")
        {
            disk.Remount("ro");
            return;
        }

        using var filler = File.Create(Path.Combine(disk.Path, "filler"));
        var page = new byte[4096];
        void Fill()
        {
            while (true)
            {
                filler.Write(page);
                filler.Flush();
            }
        }

        var full = Assert.ThrowsAny<IOException>((Action)Fill);
        Assert.Equal(28, full.HResult);
    }

    [Fact]
    public void A_new_shop_in_a_read_only_folder_is_told()
    {
        using var disk = new SmallDisk("4m");
        disk.Remount("ro");
        var folder = ShopFolder.At(Path.Combine(disk.Path, "shop")).Require();
        Assert.Equal("JL402", Ledger.Open(folder, LedgerMode.Write, new PlainJars()).Problems.Single().Code);
    }

    private static (int Jars, Problem Problem) MixUntilFull(Ledger ledger)
    {
        for (var jars = 0; jars < 10_000; jars++)
        {
            if (!BenchWork.Mix(ledger).TryGet(out _, out var problems))
            {
                return (jars, problems.Single());
            }
        }

        throw new InvalidOperationException("The disk never filled.");
    }
}
