using JarLabel.Store.Sheets;

namespace JarLabel.Tests.Store;

public sealed class SheetBookTests
{
    private const string At = "2026-03-09T14:30:00";
    private const string Stock = "letter-2x4";

    [Fact]
    public void Labels_go_to_the_next_free_places_and_on_to_a_new_sheet()
    {
        using var shop = new TempShop();
        using var ledger = shop.Open();
        Assert.Equal([(1, 1), (1, 2), (1, 3)], Take(ledger, 3));
        Assert.Equal([(1, 4), (1, 5), (1, 6), (1, 7), (1, 8), (2, 1)], Take(ledger, 6));
        Assert.Equal([2, 3, 4, 5, 6, 7, 8], ledger.Look(view => view.OpenSheet(Stock)!.Free.ToList()).Require());
    }

    [Fact]
    public void A_start_place_skips_free_ones_and_the_next_label_takes_those()
    {
        using var shop = new TempShop();
        using var ledger = shop.Open();
        Assert.Equal([(1, 7), (1, 8), (2, 1)], Take(ledger, 3, start: 7));
        Assert.Equal([(2, 2)], Take(ledger, 1));
    }

    [Fact]
    public void A_full_sheet_is_followed_by_a_new_one()
    {
        using var shop = new TempShop();
        using var ledger = shop.Open();
        Take(ledger, 8);
        Assert.Equal([(2, 1)], Take(ledger, 1));
    }

    [Theory]
    [InlineData(2, "JL432", "Free are: 4, 5, 6, 7, 8.")]
    [InlineData(0, "JL431", "places 1 to 8")]
    [InlineData(9, "JL431", "places 1 to 8")]
    public void A_start_that_is_used_or_not_there_is_refused_with_what_is_free(int start, string code, string says)
    {
        using var shop = new TempShop();
        using var ledger = shop.Open();
        Take(ledger, 3);
        var problem = ledger.Record<int>(step => step.Sheets.Take(Stock, 8, 1, start, At).Then<int>(_ => 0)).Problems.Single();
        Assert.Equal(code, problem.Code);
        Assert.Contains(says, problem.Message, StringComparison.Ordinal);
        Assert.Equal([(1, 4)], Take(ledger, 1));
    }

    [Fact]
    public void A_jammed_print_is_taken_back_and_its_places_are_used_next()
    {
        using var shop = new TempShop();
        using var ledger = shop.Open();
        Take(ledger, 5);
        ledger.Record<SheetInUse>(step => step.Sheets.TakeBack(1, [2, 3], At)).Require();
        Assert.Equal([(1, 2), (1, 3), (1, 6)], Take(ledger, 3));
        Assert.Equal("JL433", ledger.Record<SheetInUse>(step => step.Sheets.TakeBack(1, [8], At)).Problems.Single().Code);
        Assert.Equal("JL430", ledger.Record<SheetInUse>(step => step.Sheets.TakeBack(7, [1], At)).Problems.Single().Code);
    }

    [Fact]
    public void A_new_sheet_is_begun_on_demand_and_each_stock_has_its_own()
    {
        using var shop = new TempShop();
        using var ledger = shop.Open();
        Take(ledger, 2);
        ledger.Record<int>(step => step.Sheets.Begin("a4-3x7", 21, At).Number).Require();
        ledger.Record<int>(step => step.Sheets.Begin(Stock, 8, At).Number).Require();
        Assert.Equal([(3, 1)], Take(ledger, 1));
        Assert.Equal([(3, Stock, 1), (2, "a4-3x7", 0)], ledger.Look(view => view.OpenSheets()).Require().Select(s => (s.Number, s.Stock, s.Taken.Count)));
    }

    [Fact]
    public void The_list_of_sheets_is_made_again_from_the_events()
    {
        using var shop = new TempShop();
        using (var ledger = shop.Open())
        {
            Take(ledger, 11);
        }

        using var other = shop.Open(reader: 2);
        Assert.Equal([(2, 4)], Take(other, 1));
        Assert.Equal(6, other.Look(view => view.EventCount).Require());
    }

    /// <summary>Somebody who knows how events are sealed wrote one of a sheet that was never begun.</summary>
    [Fact]
    public void Events_that_make_no_sheet_are_told_and_nothing_is_recorded_after_them()
    {
        OutsideProgram.Need("sqlite3");
        using var shop = new TempShop();
        shop.Open().Dispose();
        var seal = Convert.ToHexString(EventSeal.Next(EventSeal.Start, 1, 1, 0, "sheet", At, "Taken", "{}"));
        Assert.Equal((0, ""), OutsideProgram.Run("sqlite3", shop.Folder.Ledger, $"INSERT INTO events VALUES (1, 'sheet', 1, '{At}', 'Taken', 0, '{{}}', x'{seal}'); DELETE FROM index_state"));
        foreach (var mode in Enum.GetValues<LedgerMode>())
        {
            var problem = Assert.Single(Ledger.Open(shop.Folder, mode, new PlainJars()).Problems);
            Assert.Equal("JL434", problem.Code);
            Assert.Contains("sheet 1 do not make a sheet of labels", problem.Message, StringComparison.Ordinal);
        }

        Assert.Equal((0, "1|0"), OutsideProgram.Run("sqlite3", shop.Folder.Ledger, "SELECT (SELECT count(*) FROM events), (SELECT count(*) FROM sheets)"));
    }

    private static List<(int Sheet, int Place)> Take(Ledger ledger, int count, int? start = null) => ledger
        .Record<List<(int, int)>>(step => step.Sheets.Take(Stock, 8, count, start, At).Then<List<(int, int)>>(places => places.Select(p => (p.Sheet, p.Place)).ToList()))
        .Require();
}
