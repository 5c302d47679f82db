using JarLabel.Operations.Recording;
using JarLabel.Store.Exchange;

namespace JarLabel.Tests.Store;

public sealed class ExchangeTests
{
    [Fact]
    public void Export_and_import_give_the_same_ledger_and_a_second_import_changes_nothing()
    {
        using var shop = TempShop.With(jars: 5);
        using var other = new TempShop();
        var file = Exported(shop);
        using (var ledger = other.Open())
        {
            Assert.Equal(new ImportReport(20, 0), ledger.Import(file).Require());
            Assert.Equal(new ImportReport(0, 20), ledger.Import(file).Require());
            Assert.Equal(Story(shop), ledger.Look(view => string.Join('\n', view.Events())).Require());
            Assert.Equal(6, BenchWork.Mix(ledger).Require());
            Assert.Equal(new ImportReport(0, 20), ledger.Import(file).Require());
        }

        Assert.Empty(other.Verify().Damage);
        var again = shop.Beside("again.jsonl");
        using var first = shop.Open(LedgerMode.Read);
        first.Export(again).Require();
        Assert.Equal(File.ReadAllBytes(file), File.ReadAllBytes(again));
    }

    [Fact]
    public void A_copy_is_brought_up_to_date_by_a_later_export()
    {
        using var shop = TempShop.With(jars: 3);
        using var copy = new TempShop();
        using var copied = copy.Open();
        copied.Import(Exported(shop)).Require();
        using (var ledger = shop.Open())
        {
            BenchWork.Mix(ledger).Require();
        }

        Assert.Equal(new ImportReport(2, 12), copied.Import(Exported(shop)).Require());
        Assert.Equal(Story(shop), copied.Look(view => string.Join('\n', view.Events())).Require());
    }

    [Theory]
    [InlineData("402.5", "802.5", "line 2", "JL448")]
    [InlineData("\"revision\":2", "\"revision\":3", "line 4", "JL448")]
    [InlineData("labels/1.pdf", "labels/2.pdf", "line 3", "JL448")]
    [InlineData("2026-03-09T14:30:00", "yesterday", "line 2", "JL443")]
    [InlineData("\"jar\"", "\"barrel\"", "line 2", "JL443")]
    [InlineData("\"kind\":\"Thinned\"", "\"kind\":\"Sung\"", "line 4", "JL448")]
    [InlineData("\"body\"", "\"cargo\"", "line 2", "JL443")]
    [InlineData("\"ledger\"", "\"book\"", "line 1", "JL445")]
    [InlineData("\"sequence\":3", "\"sequence\":4", "line 4", "JL447")]
    public void A_tampered_file_is_refused_whole_and_the_line_named(string found, string put, string where, string code)
    {
        using var shop = TempShop.With(jars: 2);
        var file = Exported(shop);
        var text = File.ReadAllText(file);
        var place = text.IndexOf(found, StringComparison.Ordinal);
        File.WriteAllText(file, text[..place] + put + text[(place + found.Length)..]);
        var problems = Refused(file);
        Assert.Contains(problems, p => p.Code == code && p.Where!.Contains(where, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("\"number\":1,", "\"number\":10000001,", "Read jar 10000001; numbers go up from 1, to 10000000 at most.")]
    [InlineData("\"revision\":1,", "\"revision\":2,", "Read revision 2 of a jar; no more than 1 can have been by this event.")]
    public void A_number_that_no_shop_comes_to_is_refused_though_it_is_sealed(string found, string put, string says)
    {
        using var shop = TempShop.With(jars: 1);
        var file = Exported(shop);
        EventSeal.Change(file, text => text.Insert(text.IndexOf(found, StringComparison.Ordinal), put).Replace(put + found, put, StringComparison.Ordinal));
        Assert.Equal(("JL472", file + " line 2", says), Assert.Single(Refused(file).Select(p => (p.Code, p.Where, p.Message))));
    }

    [Theory]
    [InlineData("\"places\":8", "\"places\":3", "line 3 Read \"Taken\" of a sheet of labels: it has the places 1 to 3.")]
    [InlineData("[1,2,3,4]", "[1,2,3,9]", "line 3 Read \"Taken\" of a sheet of labels: it has the places 1 to 8.")]
    [InlineData("\"kind\":\"Taken\",\"revision\":0,\"body\":{\"places\":[1,2,3,4]}", "\"kind\":\"Moved\",\"revision\":0,\"body\":{}", "line 3 Read \"Moved\" of a sheet of labels: a sheet is begun,")]
    [InlineData("\"kind\":\"Taken\",", "\"kind\":\"Torn\",", "line 3 Read \"Torn\" of a sheet of labels: a sheet is begun,")]
    [InlineData("\"number\":1,\"at\":\"2026-03-09T14:30:00\",\"kind\":\"Taken\"", "\"number\":2,\"at\":\"2026-03-09T14:30:00\",\"kind\":\"Taken\"", "line 3 Read \"Taken\" of a sheet of labels: the sheet was never begun.")]
    [InlineData("\"stock\":\"letter-2x4\"", "\"stock\":\"\"", "line 2 Read \"Begun\" of a sheet of labels: ")]
    public void What_cannot_have_happened_to_a_sheet_is_refused_though_it_is_sealed(string found, string put, string says)
    {
        using var shop = new TempShop();
        using (var ledger = shop.Open())
        {
            ledger.Record<int>(step => step.Sheets.Take("letter-2x4", 8, 4, null, "2026-03-09T14:30:00").Then<int>(places => places.Count)).Require();
        }

        var file = Exported(shop);
        EventSeal.Change(file, text => text.Replace(found, put, StringComparison.Ordinal));
        using var other = new TempShop();
        using var copy = Ledger.Open(other.Folder, LedgerMode.Write, JarReader.Instance).Require();
        var problems = copy.Import(file).Problems;
        Assert.All(problems, problem => Assert.Equal("JL473", problem.Code));
        Assert.Contains(says, $"{problems[0].Where} {problems[0].Message}", StringComparison.Ordinal);
        Assert.Equal(0, copy.Look(view => view.EventCount).Require());
        EventSeal.Change(file, text => text.Replace(put, found, StringComparison.Ordinal));
        Assert.Equal(new ImportReport(2, 0), copy.Import(file).Require());
    }

    [Fact]
    public void A_line_that_is_longer_than_any_event_ends_the_reading()
    {
        using var shop = TempShop.With(jars: 2);
        var file = Exported(shop);
        var lines = File.ReadAllLines(file);
        lines[3] += new string(' ', 1024 * 1024);
        File.WriteAllLines(file, lines);
        var problem = Assert.Single(Refused(file));
        Assert.Equal(("JL471", file + " line 4"), (problem.Code, problem.Where));
        Assert.Contains("longer than 1 MB", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_tampered_line_is_named_and_no_other()
    {
        using var shop = TempShop.With(jars: 4);
        var file = Exported(shop);
        var lines = File.ReadAllLines(file);
        lines[1] = lines[1].Replace("402.5", "402.6", StringComparison.Ordinal);
        lines[7] = lines[7].Replace("12.25", "12.26", StringComparison.Ordinal);
        File.WriteAllLines(file, lines);
        Assert.Equal([("JL448", file + " line 2"), ("JL448", file + " line 8")], Refused(file).Select(p => (p.Code, p.Where!)));
    }

    [Theory]
    [InlineData(9, "JL450")]
    [InlineData(1, "JL450")]
    public void A_file_that_was_cut_short_is_refused(int lines, string code)
    {
        using var shop = TempShop.With(jars: 4);
        var file = Exported(shop);
        File.WriteAllLines(file, File.ReadAllLines(file).Take(lines));
        Assert.Equal([code], Refused(file).Select(p => p.Code));
    }

    [Fact]
    public void A_file_cut_within_a_line_is_refused()
    {
        using var shop = TempShop.With(jars: 2);
        var file = Exported(shop);
        var text = File.ReadAllText(file);
        File.WriteAllText(file, text[..^30]);
        Assert.Equal(["JL443"], Refused(file).Select(p => p.Code));
    }

    [Fact]
    public void Another_shops_file_is_refused()
    {
        using var shop = TempShop.With(jars: 2);
        using var other = TempShop.With(jars: 2);
        using var ledger = other.Open();
        Assert.Contains("JL446", ledger.Import(Exported(shop)).Problems.Select(p => p.Code));
        Assert.Equal(8, ledger.Look(view => view.EventCount).Require());
    }

    [Fact]
    public void Two_copies_that_went_on_separately_are_told_apart()
    {
        using var shop = TempShop.With(jars: 2);
        using var copy = new TempShop();
        using var copied = copy.Open();
        copied.Import(Exported(shop)).Require();
        BenchWork.Mix(copied, keeps: 90).Require();
        using (var ledger = shop.Open())
        {
            BenchWork.Mix(ledger, keeps: 91).Require();
        }

        var problem = copied.Import(Exported(shop)).Problems.Single();
        Assert.Equal("JL449", problem.Code);
        Assert.EndsWith("line 10", problem.Where, StringComparison.Ordinal);
    }

    [Fact]
    public void A_backup_taken_while_another_program_records_is_a_whole_ledger()
    {
        using var shop = TempShop.With(jars: 2);
        using var hand = OutsideProgram.StartHand("work", shop.Folder.Path, "100000", "2");
        hand.StandardOutput.ReadLine();
        BackupReport report;
        using (var ledger = shop.Open(LedgerMode.Read))
        {
            report = ledger.Backup(shop.Beside("backup.db")).Require();
        }

        hand.StandardOutput.ReadToEnd();
        hand.WaitForExit();
        Assert.Equal(0, hand.ExitCode);
        using var restored = new TempShop();
        Directory.CreateDirectory(restored.Folder.Path);
        File.Copy(report.File, restored.Folder.Ledger);
        Assert.Equal(Story(shop)[..100], Story(restored)[..100]);
        using var again = restored.Open();
        Assert.Equal(report.Events, again.Look(view => view.EventCount).Require());
        Assert.Equal((int)report.Events / 4 + 1, BenchWork.Mix(again).Require() is var jar && report.Events % 4 == 0 ? jar : (int)report.Events / 4 + 1);
        Assert.Empty(again.Verify().Require().Damage);
    }

    [Fact]
    public void A_backup_replaces_an_older_one_of_the_same_shop_and_nothing_else()
    {
        using var shop = TempShop.With(jars: 2);
        using var other = TempShop.With(jars: 1);
        using var ledger = shop.Open();
        using var stranger = other.Open();
        var place = shop.Beside("backup.db");
        Assert.Equal(8, ledger.Backup(place).Require().Events);
        BenchWork.Mix(ledger).Require();
        Assert.Equal(10, ledger.Backup(place).Require().Events);
        Assert.Equal("JL442", stranger.Backup(place).Problems.Single().Code);
        Assert.Equal("JL441", ledger.Backup(shop.Folder.Ledger).Problems.Single().Code);
        Assert.Equal("JL441", ledger.Backup(shop.Beside("no such folder/backup.db")).Problems.Single().Code);
        File.WriteAllText(shop.Beside("letter.txt"), "Dear customer");
        Assert.Equal("JL442", ledger.Backup(shop.Beside("letter.txt")).Problems.Single().Code);
        Assert.Equal("Dear customer", File.ReadAllText(shop.Beside("letter.txt")));
    }

    private static IReadOnlyList<Problem> Refused(string file)
    {
        using var shop = new TempShop();
        using var ledger = shop.Open();
        var problems = ledger.Import(file).Problems;
        Assert.NotEmpty(problems);
        Assert.Equal(0, ledger.Look(view => view.EventCount).Require());
        return problems;
    }

    private static string Exported(TempShop shop)
    {
        using var ledger = shop.Open(LedgerMode.Read);
        return ledger.Export(shop.Beside("events.jsonl")).Require().File;
    }

    private static string Story(TempShop shop)
    {
        using var ledger = shop.Open(LedgerMode.Read);
        return ledger.Look(view => string.Join('\n', view.Events())).Require();
    }
}
