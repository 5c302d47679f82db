using JarLabel.Store.Files;

namespace JarLabel.Tests.Store;

public sealed class FileGuardTests : IDisposable
{
    private readonly TempShop shop = TempShop.With(jars: 1);

    public void Dispose() => shop.Dispose();

    [Theory]
    [InlineData("shop/ledger.db", "JL435")]
    [InlineData("shop/ledger.db-wal", "JL435")]
    [InlineData("shop/Shop.JSON", "JL435")]
    [InlineData("shop/numbers.txt", "JL435")]
    [InlineData("shop/restore.lock", "JL435")]
    [InlineData("shop/ledger-2026-03-09-143000.db", "JL435")]
    [InlineData("shop/ledger-2026-03-09-143000.db-wal", "JL435")]
    [InlineData("shop/ledger-of-spring.pdf", null)]
    [InlineData("shop/catalog/solvents.json", "JL435")]
    [InlineData("shop/layouts/labels/own.json", "JL435")]
    [InlineData("shop/staging/x", "JL435")]
    [InlineData("shop/catalog", "JL435")]
    [InlineData("shop/labels", "JL436")]
    [InlineData("shop/labels/new.pdf", null)]
    [InlineData("shop/shop.json.pdf", null)]
    [InlineData("catalog/new.pdf", null)]
    [InlineData("new.pdf", null)]
    public void A_place_is_refused_by_what_it_is(string place, string? code)
    {
        foreach (var force in (bool[])[false, true])
        {
            Assert.Equal(code, Look(place, force).Problems.SingleOrDefault()?.Code);
        }
    }

    [Fact]
    public void What_comes_to_a_place_after_the_guard_looked_is_left_alone_and_so_is_what_was_changed()
    {
        var (late, changed) = (shop.Beside("late.pdf"), shop.Beside("changed.pdf"));
        File.WriteAllText(changed, "first");
        var (nothing, something) = (Look("late.pdf").Require(), Look("changed.pdf", force: true).Require());
        File.WriteAllText(late, "Dear customer");
        File.WriteAllText(changed, "second");
        foreach (var (place, text) in ((GuardedPlace, string)[])[(nothing, "Dear customer"), (something, "second")])
        {
            Assert.Equal("JL438", DurableFile.Write(place, stream => stream.Write("ours"u8))!.Code);
            Assert.Equal(text, File.ReadAllText(place.Path));
        }

        Assert.Empty(Parts());
    }

    [Fact]
    public void A_folder_that_becomes_a_link_into_the_shop_leads_nothing_there()
    {
        Assert.SkipUnless(!OperatingSystem.IsWindows(), "links are wanted");
        Directory.CreateDirectory(shop.Beside("out"));
        var place = Look("out/shop.json").Require();
        Directory.Delete(shop.Beside("out"));
        Directory.CreateSymbolicLink(shop.Beside("out"), shop.Folder.Path);
        Assert.NotNull(DurableFile.Write(place, stream => stream.Write("ours"u8)));
        Assert.False(File.Exists(shop.Folder.Settings));
    }

    /// <summary>The step is recorded, and then its file does not fit any more: it waits, and nothing is lost.</summary>
    [Fact]
    public void A_step_whose_place_was_taken_meanwhile_is_recorded_and_its_file_waits()
    {
        using var ledger = shop.Open();
        var place = shop.Beside("label.pdf");
        ledger.Record<int>(step =>
        {
            step.Stage(place, "%PDF-ours"u8.ToArray());
            File.WriteAllText(place, "Dear customer");
            return 1;
        }).Require();
        Assert.Equal("JL417", ledger.Unmoved.Single().Code);
        Assert.Empty(ledger.Waiting);
        Assert.Equal("Dear customer", File.ReadAllText(place));
        File.Delete(place);
        BenchWork.Mix(ledger).Require();
        Assert.Equal("%PDF-ours", File.ReadAllText(place));
    }

    [Fact]
    public void What_the_ledger_knows_is_written_again_and_what_was_changed_since_is_not()
    {
        using var ledger = shop.Open();
        var place = shop.Beside("label.pdf");
        foreach (var text in (string[])["first", "second"])
        {
            ledger.Record<int>(step => Staged(step, place, text)).Require();
            Assert.Equal(text, File.ReadAllText(place));
        }

        File.AppendAllText(place, " and a note of my own");
        Assert.Equal("JL437", ledger.Record<int>(step => Staged(step, place, "third")).Problems.Single().Code);
        Assert.Equal("second and a note of my own", File.ReadAllText(place));
        ledger.Record<int>(step => Staged(step, place, "third", force: true)).Require();
        Assert.Equal("third", File.ReadAllText(place));
    }

    /// <summary>Only ours, and only when nobody writes it any more.</summary>
    [Fact]
    public void What_a_killed_writer_left_is_swept_by_the_next_and_nothing_else_is()
    {
        string Left(string name)
        {
            File.WriteAllText(shop.Beside(name), "half");
            return shop.Beside(name);
        }

        var dead = Left($".jarlabel-{Guid.NewGuid():N}.part");
        string[] others = [Left(".jarlabel-notes.part"), Left($".{Guid.NewGuid():N}.part"), Left("thesis.part")];
        var living = shop.Beside($".jarlabel-{Guid.NewGuid():N}.part");
        using (new FileStream(living, FileMode.CreateNew, FileAccess.Write, FileShare.None))
        {
            using var ledger = shop.Open(LedgerMode.Read);
            ledger.Export(shop.Beside("all.jsonl")).Require();
            Assert.False(File.Exists(dead));
            Assert.True(File.Exists(living));
            Assert.All(others, file => Assert.Equal("half", File.ReadAllText(file)));
        }

        ShopSettingsFile.Write(shop.Folder, new ShopSettings()).Require();
        Assert.True(File.Exists(living));
        using var again = shop.Open(LedgerMode.Read);
        again.Backup(shop.Beside("copy.db")).Require();
        Assert.False(File.Exists(living));
    }

    [Fact]
    public void Forty_threads_that_change_one_setting_each_lose_none()
    {
        Parallel.For(0, 40, n => ShopSettingsFile.Change(shop.Folder, now => now with { Printers = [.. now.Printers, new NamedPrinter($"p{n}", "ipp://192.168.1.30/ipp/print")] }).Require());
        Assert.Equal(Enumerable.Range(0, 40).Select(n => $"p{n}").Order(), ShopSettingsFile.Read(shop.Folder).Require().Printers.Select(p => p.Name).Order());
    }

    [Fact]
    public void What_was_kept_is_noted_the_moment_it_is_and_what_was_dropped_is_not()
    {
        var kept = KeptWork.Watch();
        Assert.Equal((false, "Nothing was recorded."), (kept.Any, kept.Words));
        using var ledger = shop.Open();
        Assert.False(ledger.Record<int>(_ => new Problem("JL101", "no")).Ok);
        Assert.False(kept.Any);
        BenchWork.Mix(ledger).Require();
        Assert.Equal("This is recorded all the same: jar 2.", kept.Words);
        ShopSettingsFile.Write(shop.Folder, new ShopSettings()).Require();
        Assert.EndsWith("jar 2, the shop's settings.", kept.Words, StringComparison.Ordinal);
    }

    private static Result<int> Staged(LedgerStep step, string place, string text, bool force = false)
    {
        step.Stage(place, System.Text.Encoding.UTF8.GetBytes(text), force);
        return 1;
    }

    private Result<GuardedPlace> Look(string place, bool force = false)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(shop.Beside(place))!);
        return new FileGuard(shop.Folder).Look(shop.Beside(place), OwnKind.Pdf, force);
    }

    private IEnumerable<string> Parts() => Directory.EnumerateFiles(shop.Beside("."), "*.part", new EnumerationOptions { AttributesToSkip = 0 });
}
