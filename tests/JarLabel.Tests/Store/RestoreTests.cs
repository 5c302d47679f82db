using JarLabel.Store.Exchange;

namespace JarLabel.Tests.Store;

/// <summary>A backup in the ledger's place: checked before, what stood there kept, and nothing lost on the way.</summary>
public sealed class RestoreTests
{
    private static readonly DateTime Now = new(2026, 3, 9, 14, 30, 0);

    [Fact]
    public void After_a_crash_and_damage_the_backup_is_the_ledger_and_what_stood_there_is_kept_byte_for_byte()
    {
        using var shop = new CrashedShop(jars: 20, logged: 5);
        using (var file = File.OpenWrite(shop.Folder.Ledger))
        {
            file.SetLength(10_000);
        }

        var (ledger, log, backup) = (File.ReadAllBytes(shop.Folder.Ledger), File.ReadAllBytes(shop.Folder.Ledger + "-wal"), File.ReadAllBytes(shop.Backup));
        var report = Put(shop.Folder, shop.Backup).Require();
        Assert.Equal(80, report.Events);
        Assert.Equal(["ledger-2026-03-09-143000.db", "ledger-2026-03-09-143000.db-wal", "ledger-2026-03-09-143000.db-shm"], report.Aside.Select(Path.GetFileName));
        Assert.Equal(ledger, File.ReadAllBytes(report.Aside[0]));
        Assert.Equal(log, File.ReadAllBytes(report.Aside[1]));
        Assert.Equal(backup, File.ReadAllBytes(shop.Backup));
        Assert.Equal(20, shop.LastJar());
        using var again = Ledger.Open(shop.Folder, LedgerMode.Write, new PlainJars()).Require();
        BenchWork.Thin(again, 20).Require();
        Assert.DoesNotContain(again.Verify().Require().Damage, problem => problem.Code != "JL466");
    }

    [Fact]
    public void A_backup_that_was_put_in_place_by_hand_is_gone_on_with_and_the_log_is_kept()
    {
        using var shop = new CrashedShop(jars: 20, logged: 5);
        File.Copy(shop.Backup, shop.Folder.Ledger, overwrite: true);
        var log = File.ReadAllBytes(shop.Folder.Ledger + "-wal");
        var report = Put(shop.Folder, shop.Folder.Ledger).Require();
        Assert.Equal(80, report.Events);
        Assert.Equal(log, File.ReadAllBytes(report.Aside[0]));
        Assert.Equal(20, shop.LastJar());
        Assert.Equal("JL458", Put(shop.Folder, shop.Folder.Ledger).Problems.Single().Code);
    }

    /// <summary>The log of another shop holds every list and not the page that says whose it is: the two together look like a whole ledger.</summary>
    [Theory]
    [InlineData(1, 3)]
    [InlineData(2, 1)]
    [InlineData(2, 4)]
    public void The_log_of_another_shop_is_moved_aside_as_the_problem_advises(int jars, int logged)
    {
        using var shop = new CrashedShop(jars, logged);
        using var other = new TempShop();
        using (var ledger = other.Open())
        {
            BenchWork.Mix(ledger, keeps: 500).Require();
        }

        File.Copy(other.Folder.Ledger, shop.Folder.Ledger, overwrite: true);
        Assert.Equal("JL452", shop.Refused(LedgerMode.Write));
        var report = Restore.Do(shop.Folder, new RestoreWish(shop.Folder.Ledger, new DateTime(2026, 3, 9)), new PlainJars()).Require();
        Assert.EndsWith("-wal", report.Aside[0], StringComparison.Ordinal);
        Assert.Equal(1, shop.LastJar());
    }

    [Fact]
    public void A_ledger_that_is_in_order_is_only_replaced_when_that_is_said_and_its_numbers_stay_given()
    {
        using var shop = TempShop.With(jars: 2);
        var backup = shop.Beside("backup.db");
        int[] bags = [];
        using (var ledger = shop.Open())
        {
            ledger.Backup(backup).Require();
            BenchWork.Mix(ledger).Require();
            bags = [Bag(ledger), Bag(ledger)];
        }

        Assert.Equal([1, 2], bags);
        File.Delete(Path.Combine(shop.Folder.Path, "numbers.txt"));
        var before = File.ReadAllBytes(shop.Folder.Ledger);
        Assert.Equal("JL458", Put(shop.Folder, backup).Problems.Single().Code);
        Assert.Equal(before, File.ReadAllBytes(shop.Folder.Ledger));
        Assert.Equal(2, Put(shop.Folder, backup, dryRun: true, force: true).Require().Cautions.Count + Put(shop.Folder, backup, dryRun: true, force: true).Require().Aside.Count + 1);
        Assert.Equal(before, File.ReadAllBytes(shop.Folder.Ledger));

        var report = Put(shop.Folder, backup, force: true).Require();
        Assert.Equal(before, File.ReadAllBytes(report.Aside.Single()));
        Assert.Equal(["Jar 3 was", "Bags 1 to 2 were"], report.Cautions.Select(caution => caution.Message[..caution.Message.IndexOf(" given", StringComparison.Ordinal)]));
        using var again = shop.Open();
        Assert.Equal(4, BenchWork.Mix(again).Require());
        Assert.Equal(3, Bag(again));
    }

    [Theory]
    [InlineData("cut")]
    [InlineData("bit")]
    [InlineData("text")]
    [InlineData("songs")]
    public void What_is_no_whole_backup_is_told_and_nothing_is_changed(string damage)
    {
        using var shop = new CrashedShop(jars: 20, logged: 5);
        var bytes = File.ReadAllBytes(shop.Backup);
        var wrong = shop.Beside("wrong.db");
        switch (damage)
        {
            case "cut":
                File.WriteAllBytes(wrong, bytes[..^4096]);
                break;
            case "bit":
                bytes[bytes.AsSpan().LastIndexOf("402.5"u8)] ^= 1;
                File.WriteAllBytes(wrong, bytes);
                break;
            case "text":
                File.WriteAllText(wrong, "not a ledger");
                break;
            default:
                OutsideProgram.Need("sqlite3");
                OutsideProgram.Run("sqlite3", wrong, "CREATE TABLE songs (title TEXT)");
                break;
        }

        var before = shop.Bytes();
        Assert.Equal("JL457", Put(shop.Folder, wrong, force: true, dryRun: true).Problems[0].Code);
        Assert.Equal(before, shop.Bytes());
        Assert.Equal("JL457", Put(shop.Folder, wrong, force: true).Problems[0].Code);
        File.Delete(Path.Combine(shop.Folder.Path, "restore.lock"));
        Assert.Equal(before, shop.Bytes());
        Assert.Equal("JL444", Put(shop.Folder, shop.Beside("none.db")).Problems.Single().Code);
    }

    [Fact]
    public void The_backup_of_another_shop_is_refused_unless_that_is_said()
    {
        using var shop = TempShop.With(jars: 2);
        using var other = new CrashedShop(jars: 3, logged: 1);
        Assert.Equal("JL424", Put(shop.Folder, other.Backup).Problems.Single().Code);
        Assert.Equal(12, Put(shop.Folder, other.Backup, force: true).Require().Events);
    }

    [Fact]
    public void After_a_restore_that_was_killed_the_ledger_it_set_aside_is_named_and_comes_back()
    {
        using var shop = new CrashedShop(jars: 2, logged: 1);
        var aside = Path.Combine(shop.Folder.Path, "ledger-2026-03-09-143000.db");
        Array.ForEach(["", "-wal", "-shm"], end => File.Move(shop.Folder.Ledger + end, aside + end));
        File.WriteAllText(Path.Combine(shop.Folder.Path, $".jarlabel-{Guid.NewGuid():N}.part"), "half a copy");
        File.WriteAllText(Directory.GetFiles(shop.Folder.Path, "*.part").Single() + "-journal", "its journal");
        var told = Ledger.Open(shop.Folder, LedgerMode.Write, new PlainJars()).Problems.Single();
        Assert.Equal("JL420", told.Code);
        Assert.Contains(aside, told.Message, StringComparison.Ordinal);
        Assert.Equal(10, Put(shop.Folder, aside).Require().Events); // four of each of two jars, and the two in the log
        Assert.Equal(3, shop.LastJar());
        Assert.Empty(Directory.GetFiles(shop.Folder.Path, "*.part*"));
    }

    [Fact]
    public void Where_the_ledger_is_lost_or_the_shop_is_new_the_backup_is_put_there()
    {
        using var shop = new CrashedShop(jars: 2, logged: 1);
        File.Delete(shop.Folder.Ledger);
        Assert.Equal("JL420", shop.Refused(LedgerMode.Write));
        Assert.Equal(["ledger-2026-03-09-143000.db-wal", "ledger-2026-03-09-143000.db-shm"], Put(shop.Folder, shop.Backup).Require().Aside.Select(Path.GetFileName));
        Assert.Equal(2, shop.LastJar());
        var fresh = ShopFolder.At(shop.Beside("fresh")).Require();
        Assert.Empty(Put(fresh, shop.Backup).Require().Aside);
        using var ledger = Ledger.Open(fresh, LedgerMode.Write, new PlainJars()).Require();
        Assert.Equal(3, BenchWork.Mix(ledger).Require());
    }

    /// <summary>A folder lies where the ledger, or a file beside it, is to be kept: nothing can be moved there.</summary>
    [Theory]
    [InlineData("", "Nothing was changed.")]
    [InlineData("-wal", "Mend that, then give the same command again.")]
    public void A_restore_that_cannot_set_aside_what_stands_here_says_what_is_where_and_goes_on_later(string end, string says)
    {
        using var shop = new CrashedShop(jars: 2, logged: 1);
        var (ledger, log) = (File.ReadAllBytes(shop.Folder.Ledger), File.ReadAllBytes(shop.Folder.Ledger + "-wal"));
        var aside = Path.Combine(shop.Folder.Path, "ledger-2026-03-09-143000.db");
        Directory.CreateDirectory(aside + end);
        var problem = Assert.Single(Put(shop.Folder, shop.Backup, force: true).Problems);
        Assert.Equal(("JL459", shop.Folder.Ledger), (problem.Code, problem.Where));
        Assert.Contains(says, problem.Message, StringComparison.Ordinal);
        Assert.Equal(end.Length > 0, problem.Message.Contains($"What stood here is kept as {aside}.", StringComparison.Ordinal));
        Assert.Equal(ledger, File.ReadAllBytes(end.Length == 0 ? shop.Folder.Ledger : aside));
        Assert.Equal(log, File.ReadAllBytes(shop.Folder.Ledger + "-wal"));
        Directory.Delete(aside + end);
        Assert.Equal(8, Put(shop.Folder, shop.Backup, force: true).Require().Events);
        Assert.Equal(2, shop.LastJar());
    }

    [Fact]
    public void A_link_in_the_ledgers_place_stays_a_link()
    {
        using var shop = TempShop.With(jars: 2);
        var (real, backup) = (shop.Beside("real.db"), shop.Beside("backup.db"));
        using (var ledger = shop.Open())
        {
            ledger.Backup(backup).Require();
        }

        File.Delete(shop.Folder.Ledger);
        File.WriteAllText(real, "damaged");
        File.CreateSymbolicLink(shop.Folder.Ledger, real);
        var report = Put(shop.Folder, backup).Require();
        Assert.Equal("damaged", File.ReadAllText(report.Aside.Single()));
        Assert.NotNull(new FileInfo(shop.Folder.Ledger).LinkTarget);
        Assert.True(shop.Verify().Sound);
    }

    /// <summary>Many at once, some restoring and some mixing: there is always one whole ledger, and no number is given twice.</summary>
    [Fact]
    public void Who_records_meanwhile_records_in_the_ledger_that_stands_there()
    {
        using var shop = TempShop.With(jars: 3);
        var backup = shop.Beside("backup.db");
        using (var ledger = shop.Open())
        {
            ledger.Backup(backup).Require();
        }

        var given = new System.Collections.Concurrent.ConcurrentBag<int>();
        Parallel.For(0, 60, turn =>
        {
            if (turn % 6 == 0)
            {
                Assert.True(Put(shop.Folder, backup, force: true) is { Ok: true } or { Problems: [{ Code: "JL413" }] });
            }
            else if (Ledger.Open(shop.Folder, LedgerMode.Write, new PlainJars()).TryGet(out var ledger, out var problems))
            {
                using (ledger)
                {
                    given.Add(BenchWork.Mix(ledger).Require());
                }
            }
            else
            {
                Assert.Equal("JL402", problems.Single().Code);
            }
        });
        Assert.Equal(given.Count, given.Distinct().Count());
        Assert.True(given.Count > 30);
        Assert.DoesNotContain(shop.Verify().Damage, problem => problem.Code != "JL466");
    }

    private static int Bag(Ledger ledger) => ledger.Record<int>(step =>
    {
        var bag = step.NextNumber(SubjectKind.Bag);
        step.Append(Subject.Bag(bag), "2026-03-09T14:30:00", "Mixed", 0, "{\"ml\":1,\"shelf\":\"main\",\"keeps\":1}");
        return bag;
    }).Require();

    private static Result<RestoreReport> Put(ShopFolder folder, string backup, bool force = false, bool dryRun = false) =>
        Restore.Do(folder, new RestoreWish(backup, Now, force, dryRun), new PlainJars());
}
