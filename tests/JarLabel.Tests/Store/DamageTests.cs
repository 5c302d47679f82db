using JarLabel.Core;
using JarLabel.Hand;
using JarLabel.Store;

namespace JarLabel.Tests.Store;

public sealed class DamageTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(99)]
    [InlineData(4096)]
    [InlineData(10_000)]
    [InlineData(-1)]
    [InlineData(-4096)]
    public void A_truncated_database_is_told_at_once_and_left_as_it_is(int length)
    {
        using var shop = TempShop.With(jars: 20);
        var whole = new FileInfo(shop.Folder.Ledger).Length;
        using (var file = File.OpenWrite(shop.Folder.Ledger))
        {
            file.SetLength(length > 0 || length == 0 ? length : whole + length);
        }

        var left = File.ReadAllBytes(shop.Folder.Ledger);
        foreach (var mode in Enum.GetValues<LedgerMode>())
        {
            var problem = Ledger.Open(shop.Folder, mode, new PlainJars()).Problems.Single();
            Assert.Equal("JL410", problem.Code);
            Assert.Equal(shop.Folder.Ledger, problem.Where);
        }

        Assert.Equal(left, File.ReadAllBytes(shop.Folder.Ledger));
    }

    [Theory]
    [InlineData("text", "JL410")]
    [InlineData("SQLite format 3", "JL410")]
    public void A_file_that_is_no_database_is_told(string contents, string code)
    {
        using var shop = new TempShop();
        Directory.CreateDirectory(shop.Folder.Path);
        File.WriteAllText(shop.Folder.Ledger, string.Concat(Enumerable.Repeat(contents, 500)));
        Assert.Equal(code, Ledger.Open(shop.Folder, LedgerMode.Write, new PlainJars()).Problems.Single().Code);
    }

    /// <summary>One bit at a time, at places drawn from a seed: what is read is what was recorded, or a problem; and the check of the
    /// whole shop tells whenever anything that is kept has changed.</summary>
    [Fact]
    public void A_flipped_bit_never_changes_what_is_read_untold()
    {
        using var shop = TempShop.With(jars: 30);
        var sound = File.ReadAllBytes(shop.Folder.Ledger);
        var story = Story(shop).Require();
        var random = new Random(20260309);
        var (told, harmless) = (0, 0);
        for (var flip = 0; flip < 300; flip++)
        {
            var place = random.Next(sound.Length);
            var flipped = (byte[])sound.Clone();
            flipped[place] ^= (byte)(1 << random.Next(8));
            File.WriteAllBytes(shop.Folder.Ledger, flipped);
            var read = Story(shop);
            Assert.True(!read.Ok || read.Require() == story, $"flip {flip} at byte {place} changed what is read, untold");
            var verified = Verified(shop);
            Assert.True(read.Ok || !verified, $"flip {flip} at byte {place} stopped a reading, and the check does not tell");
            told += verified ? 0 : 1;
            harmless += verified ? 1 : 0;
        }

        output.WriteLine($"300 flips: {told} told, {harmless} in bytes that change nothing.");

        // Pages that are free or nearly empty in so small a ledger, such as that of the tested jars, say nothing.
        Assert.True(told > 80);
    }

    [Fact]
    public void A_lost_ledger_beside_its_labels_is_told_instead_of_counting_from_one_again()
    {
        using var shop = TempShop.With(jars: 2);
        File.Delete(shop.Folder.Ledger);
        foreach (var mode in Enum.GetValues<LedgerMode>())
        {
            Assert.Equal("JL420", Ledger.Open(shop.Folder, mode, new PlainJars()).Problems.Single().Code);
        }
    }

    [Fact]
    public void A_label_that_was_changed_is_damage_and_one_that_was_removed_is_a_notice()
    {
        using var shop = TempShop.With(jars: 3);
        File.AppendAllText(Path.Combine(shop.Folder.Labels, "1.pdf"), "x");
        File.Delete(Path.Combine(shop.Folder.Labels, "2.pdf"));
        var report = shop.Verify();
        Assert.Equal(["JL466"], report.Damage.Select(p => p.Code));
        Assert.Equal(["JL467"], report.Notices.Select(p => p.Code));
        Assert.Equal((12L, 3, 1), (report.Events, report.Jars, report.Files));
    }

    private static Result<string> Story(TempShop shop)
    {
        if (!Ledger.Open(shop.Folder, LedgerMode.Read, new PlainJars()).TryGet(out var ledger, out var problems))
        {
            return Result<string>.Failed(problems);
        }

        using (ledger)
        {
            return ledger.Look(view => string.Join('\n', Enumerable.Range(1, 30).SelectMany(jar => view.EventsOf(Subject.Jar(jar)))));
        }
    }

    private static bool Verified(TempShop shop)
    {
        if (!Ledger.Open(shop.Folder, LedgerMode.Read, new PlainJars()).TryGet(out var ledger, out _))
        {
            return false;
        }

        using (ledger)
        {
            return ledger.Verify() is { Ok: true } report && report.Require().Sound;
        }
    }
}
