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
    public async Task Labels_that_are_printed_again_during_the_check_are_no_damage()
    {
        using var shop = TempShop.With(jars: 3);
        using var done = new CancellationTokenSource();
        var writers = Enumerable.Range(1, 2).Select(jar => Task.Run(
            () =>
            {
                using var ledger = shop.Open();
                while (!done.IsCancellationRequested)
                {
                    BenchWork.Thin(ledger, jar).Require();
                }
            },
            TestContext.Current.CancellationToken)).ToArray();
        using var looking = shop.Open(LedgerMode.Read);
        for (var look = 0; look < 150; look++)
        {
            var report = looking.Verify().Require();
            Assert.True(report.Sound && report.Notices.Count == 0, $"look {look + 1}: {string.Join("; ", report.Damage.Concat(report.Notices))}");
        }

        await done.CancelAsync();
        await Task.WhenAll(writers);
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

    /// <summary>The index by which bags, bottles and sheets are found, the list of sheets, and the index of the shelves, each emptied as a lost
    /// page leaves it: every list that stands on it tells, and none is simply empty.</summary>
    [Theory]
    [InlineData("events_of", "bags JL425", "bottle JL425", "sheets JL425", "jar JL425")]
    [InlineData("sheets_open", "sheet JL421")]
    [InlineData("sheets", "sheets JL421")]
    [InlineData("jars_by_use", "shelf JL421")]
    [InlineData("jars_by_shelf", "main JL421")]
    [InlineData("jars", "listed JL421")]
    public void A_list_that_lost_its_entries_is_told_and_never_shown_as_empty(string lost, params string[] told)
    {
        using var shop = TempShop.With(jars: 4);
        using (var ledger = shop.Open())
        {
            ledger.Record<int>(step =>
            {
                foreach (var of in (Subject[])[Subject.Bag(step.NextNumber(SubjectKind.Bag)), Subject.Bottle(step.NextNumber(SubjectKind.Bottle))])
                {
                    step.Append(of, "2026-03-09T14:30:00", "Added", 0, "{}");
                }

                return step.Sheets.Begin("a4", 24, "2026-03-09T14:30:00").Number;
            }).Require();
        }

        Empty(shop.Folder.Ledger, lost);
        using var looking = shop.Open(LedgerMode.Read);
        (string Name, Func<LedgerView, object> Look)[] looks =
        [
            ("bags", view => view.EventsOf(SubjectKind.Bag).ToList()),
            ("bottle", view => view.EventsOf(Subject.Bottle(1))),
            ("sheets", view => view.OpenSheets()),
            ("sheet", view => (object?)view.OpenSheet("a4") ?? "none"),
            ("jar", view => view.EventsOf(Subject.Jar(2))),
            ("shelf", view => view.Shelf(new())),
            ("main", view => view.Shelf(new(Shelf: "main"))),
            ("listed", view => (object?)view.Jar(2) ?? "none"),
        ];
        foreach (var line in told)
        {
            var found = looking.Look(looks.Single(look => look.Name == line.Split(' ')[0]).Look);
            Assert.Equal(line.Split(' ')[1], found.Ok ? $"{line}: nothing was told" : found.Problems.Single().Code);
        }

        Assert.False(looking.Verify().Require().Sound);
    }

    [Theory]
    [InlineData("events_of")]
    [InlineData("jars_by_use")]
    [InlineData("jars_by_shelf")]
    public void What_the_database_finds_wrong_in_itself_is_told_by_the_check_which_changes_nothing(string lost)
    {
        using var shop = TempShop.With(jars: 4);
        Assert.DoesNotContain("JL460", shop.Verify().Damage.Select(problem => problem.Code));
        Empty(shop.Folder.Ledger, lost);
        var before = File.ReadAllBytes(shop.Folder.Ledger);
        Assert.Contains(
            shop.Verify().Damage,
            problem => (problem.Code, problem.Where) == ("JL460", shop.Folder.Ledger) && problem.Message.Contains($"index {lost}", StringComparison.Ordinal));
        Assert.Equal(before, File.ReadAllBytes(shop.Folder.Ledger));
    }

    /// <summary>Makes the root of a table or index a page without entries, as SQLite's file format has it.</summary>
    private static void Empty(string ledger, string name)
    {
        OutsideProgram.Need("sqlite3");
        var root = int.Parse(OutsideProgram.Run("sqlite3", ledger, $"SELECT rootpage FROM sqlite_schema WHERE name = '{name}'").Said, System.Globalization.CultureInfo.InvariantCulture);
        var bytes = File.ReadAllBytes(ledger);
        byte kind = name is "sheets" or "jars" ? (byte)0x0D : (byte)0x0A;
        ((byte[])[kind, 0, 0, 0, 0, 0x10, 0, 0]).CopyTo(bytes, (root - 1) * 4096);
        File.WriteAllBytes(ledger, bytes);
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
