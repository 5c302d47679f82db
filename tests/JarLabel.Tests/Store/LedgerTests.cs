using JarLabel.Store.Index;

namespace JarLabel.Tests.Store;

public sealed class LedgerTests
{
    private const string At = "2026-03-09T14:30:00";

    [Fact]
    public void A_recorded_step_is_there_for_the_next_program()
    {
        using var shop = TempShop.With(jars: 2);
        using var ledger = shop.Open(LedgerMode.Read);
        var events = ledger.Look(view => view.EventsOf(Subject.Jar(2))).Require();
        Assert.Equal(["Mixed", "Labelled", "Thinned", "Labelled"], events.Select(e => e.Kind));
        Assert.Equal([5L, 6, 7, 8], events.Select(e => e.Sequence));
        Assert.Equal([1, 1, 2, 2], events.Select(e => e.Revision));
        Assert.Equal("{\"ml\":12.25}", events[2].Body);
        Assert.Equal(At, events[0].At);
    }

    [Fact]
    public void The_label_is_in_its_place_when_the_step_is_recorded_and_not_before()
    {
        using var shop = new TempShop();
        using var ledger = shop.Open();
        var label = Path.Combine(shop.Folder.Labels, "1.pdf");
        ledger.Record<int>(step =>
        {
            var jar = BenchWork.Mix(step);
            Assert.False(File.Exists(label));
            return jar;
        }).Require();
        Assert.Equal(BenchWork.LabelOf(1, 1), File.ReadAllBytes(label));
        Assert.Empty(Directory.EnumerateFileSystemEntries(Path.Combine(shop.Folder.Path, "staging")));
        Assert.Single(Directory.EnumerateFileSystemEntries(shop.Folder.Labels));
    }

    [Fact]
    public void A_step_that_ends_in_a_problem_leaves_nothing()
    {
        using var shop = TempShop.With(jars: 1);
        using var ledger = shop.Open();
        var failed = ledger.Record<int>(step =>
        {
            BenchWork.Mix(step);
            return new Problem("JL101", "Not like this.");
        });
        Assert.Equal("JL101", failed.Problems.Single().Code);
        AssertOnlyOneJar(shop, ledger);
    }

    [Fact]
    public void A_step_that_breaks_leaves_nothing_and_the_ledger_goes_on()
    {
        using var shop = TempShop.With(jars: 1);
        using var ledger = shop.Open();
        Assert.Throws<DivideByZeroException>(() => ledger.Record<int>(step =>
        {
            BenchWork.Mix(step);
            throw new DivideByZeroException();
        }));
        AssertOnlyOneJar(shop, ledger);
        Assert.Equal(2, BenchWork.Mix(ledger).Require());
    }

    [Fact]
    public void Jars_that_do_not_add_up_are_not_recorded()
    {
        using var shop = TempShop.With(jars: 1);
        using var ledger = shop.Open();
        var failed = ledger.Record<int>(step =>
        {
            step.Append(Subject.Jar(step.NextNumber(SubjectKind.Jar)), At, "Thinned", 1, "{}");
            return 0;
        });
        Assert.Equal("JL998", failed.Problems.Single().Code);
        AssertOnlyOneJar(shop, ledger);
    }

    [Fact]
    public void A_file_in_place_of_the_label_folder_stops_the_step_with_its_name()
    {
        using var shop = TempShop.With(jars: 1);
        using var ledger = shop.Open();
        var failed = ledger.Record<int>(step =>
        {
            BenchWork.Mix(step);
            step.Stage("ledger.db/1.pdf", [1, 2, 3]);
            return 0;
        });
        Assert.Equal("JL416", failed.Problems.Single().Code);
        Assert.EndsWith("1.pdf", failed.Problems.Single().Where, StringComparison.Ordinal);
        AssertOnlyOneJar(shop, ledger);
    }

    [Fact]
    public void A_folder_in_place_of_the_label_stops_the_step()
    {
        using var shop = TempShop.With(jars: 1);
        Directory.CreateDirectory(Path.Combine(shop.Folder.Labels, "2.pdf"));
        using var ledger = shop.Open();
        Assert.Equal("JL436", BenchWork.Mix(ledger).Problems.Single().Code);
        Assert.Equal(4, ledger.Look(view => view.EventCount).Require());
    }

    [Fact]
    public void A_label_can_be_written_outside_the_shop()
    {
        using var shop = TempShop.With(jars: 1);
        using var ledger = shop.Open();
        var file = ledger.Record<string>(step => step.Stage(shop.Beside("for the printer.pdf"), [1, 2, 3]).Path).Require();
        Assert.Equal(shop.Beside("for the printer.pdf"), file);
        Assert.Equal([1, 2, 3], File.ReadAllBytes(file));
        Assert.Equal(3, shop.Verify().Files + 1);
    }

    [Fact]
    public void Numbers_go_on_and_differ_within_a_step()
    {
        using var shop = TempShop.With(jars: 3);
        using var ledger = shop.Open();
        var (first, second, bag) = ledger.Record<(int, int, int)>(step =>
        {
            var jars = (BenchWork.Mix(step).Require(), BenchWork.Mix(step).Require());
            return (jars.Item1, jars.Item2, step.NextNumber(SubjectKind.Bag));
        }).Require();
        Assert.Equal((4, 5, 1), (first, second, bag));
    }

    [Theory]
    [InlineData("Mixed", "9 March", "{}")]
    [InlineData("Mixed", At, "[]")]
    [InlineData("Mixed", At, "{\n}")]
    [InlineData("Mixed", At, "{")]
    [InlineData("", At, "{}")]
    public void An_event_out_of_form_is_a_fault_of_the_program(string kind, string at, string body)
    {
        using var shop = new TempShop();
        using var ledger = shop.Open();
        Assert.ThrowsAny<ArgumentException>(() => ledger.Record<int>(step =>
        {
            step.Append(Subject.Jar(1), at, kind, 1, body);
            return 0;
        }));
    }

    [Fact]
    public void The_shelf_comes_soonest_use_by_first_page_by_page()
    {
        using var shop = TempShop.With(jars: 7);
        using var ledger = shop.Open();
        ledger.Record<int>(step => Happen(step, 3, "Moved", "{\"shelf\":\"cold\"}")).Require();
        ledger.Record<int>(step => Happen(step, 1, "Discarded", "{}")).Require();
        var first = ledger.Look(view => view.Shelf(new ShelfQuery(Take: 3))).Require();
        var mark = new ShelfMark(first[^1].UseBy, first[^1].Number);
        var second = ledger.Look(view => view.Shelf(new ShelfQuery(Take: 3, After: mark))).Require();
        var cold = ledger.Look(view => view.Shelf(new ShelfQuery(Shelf: "cold"))).Require();
        var due = ledger.Look(view => view.Shelf(new ShelfQuery(Due: new DateOnly(2026, 6, 19)))).Require();
        Assert.Equal([2, 3, 4], first.Select(jar => jar.Number));
        Assert.Equal([5, 6, 7], second.Select(jar => jar.Number));
        Assert.Equal([3], cold.Select(jar => jar.Number));
        Assert.Equal([2, 3], due.Select(jar => jar.Number));
        Assert.Equal(414.75, first[0].Liquid.Milliliters);
    }

    [Fact]
    public void Shelf_totals_follow_every_step()
    {
        using var shop = TempShop.With(jars: 4);
        using var ledger = shop.Open();
        ledger.Record<int>(step => Happen(step, 2, "Moved", "{\"shelf\":\"cold\"}")).Require();
        ledger.Record<int>(step => Happen(step, 4, "Discarded", "{}")).Require();
        var totals = ledger.Look(view => view.ShelfTotals()).Require();
        Assert.Equal([("cold", 1, 414.75), ("main", 2, 829.5)], totals.Select(t => (t.Shelf, t.Jars, t.Liquid.Milliliters)));
    }

    [Fact]
    public void What_stands_on_a_shelf_is_told_by_kind_and_without_jars_that_are_not_to_count()
    {
        using var shop = TempShop.With(jars: 4);
        OutsideProgram.Need("sqlite3");
        Assert.Equal((0, ""), OutsideProgram.Run("sqlite3", shop.Folder.Ledger, """
            CREATE TEMP TABLE put AS SELECT * FROM jars WHERE number IN (2, 3, 4);
            DELETE FROM jars WHERE number IN (2, 3, 4);
            INSERT INTO jars SELECT * FROM (SELECT number, revision, events, shelf, grade, solvent,
              CASE number WHEN 2 THEN 1.15 WHEN 3 THEN 2.039 END, milliliters, mixed, ready, test_from, use_by, tested, test_passed, on_shelf FROM put);
            """));
        using var ledger = shop.Open();
        var (all, less) = ledger.Look(view => (Told(view.ShelfLiquids("main")), Told(view.ShelfLiquids("main", 1, 3)))).Require();
        Assert.Equal(["1.15 414.75", "1.5 414.75", "2.03 414.75"], all);
        Assert.Equal(["1.15 414.75"], less);
        Assert.Empty(ledger.Look(view => view.ShelfLiquids("cold")).Require());

        static string[] Told(IEnumerable<ShelfLiquid> liquids) =>
            [.. liquids.OrderBy(liquid => liquid.Cut.PoundsPerUsGallon).Select(liquid => FormattableString.Invariant($"{liquid.Cut.PoundsPerUsGallon} {liquid.Liquid.Milliliters}"))];
    }

    [Fact]
    public void A_list_made_by_an_older_reader_is_made_anew_from_the_events()
    {
        using var shop = TempShop.With(jars: 2);
        OutsideProgram.Need("sqlite3");
        Assert.Equal((0, ""), OutsideProgram.Run("sqlite3", shop.Folder.Ledger, "UPDATE jars SET grade = 'other'"));
        using (var same = shop.Open())
        {
            Assert.Equal("other", same.Look(view => view.Jar(1)!.Flakes).Require());
        }

        using var newer = shop.Open(LedgerMode.Read, reader: 2);
        Assert.Equal("garnet", newer.Look(view => view.Jar(1)!.Flakes).Require());
    }

    [Fact]
    public void Looking_into_a_shop_without_a_ledger_finds_nothing_and_makes_nothing()
    {
        using var shop = new TempShop();
        Directory.CreateDirectory(shop.Folder.Path);
        using var ledger = shop.Open(LedgerMode.Read);
        Assert.Equal(0, ledger.Look(view => view.EventCount).Require());
        Assert.Empty(ledger.Look(view => view.Shelf(new ShelfQuery())).Require());
        Assert.Empty(Directory.EnumerateFileSystemEntries(shop.Folder.Path));
    }

    private static int Happen(LedgerStep step, int jar, string kind, string body)
    {
        step.Append(Subject.Jar(jar), At, kind, 2, body);
        return jar;
    }

    private static void AssertOnlyOneJar(TempShop shop, Ledger ledger)
    {
        Assert.Equal((4L, 1), ledger.Look(view => (view.EventCount, view.LastNumber(SubjectKind.Jar))).Require());
        Assert.Equal(["1.pdf"], Directory.EnumerateFileSystemEntries(shop.Folder.Labels).Select(Path.GetFileName));
        Assert.True(shop.Verify().Sound);
    }
}
