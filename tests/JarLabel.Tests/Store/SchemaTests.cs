namespace JarLabel.Tests.Store;

/// <summary>Databases of other versions, written by literal SQL with the sqlite3 command line.</summary>
public sealed class SchemaTests
{
    /// <summary>Version 1 as it was: no list of jars yet. The two seals were computed with Python's hashlib from the rule in EventChain.</summary>
    private const string VersionOne = """
        PRAGMA application_id = 1247900236;
        PRAGMA journal_mode = WAL;
        CREATE TABLE about (id INTEGER PRIMARY KEY CHECK (id = 1), ledger TEXT NOT NULL) STRICT;
        CREATE TABLE events (sequence INTEGER PRIMARY KEY, subject TEXT NOT NULL, number INTEGER NOT NULL, at TEXT NOT NULL, kind TEXT NOT NULL,
          revision INTEGER NOT NULL, body TEXT NOT NULL, chain BLOB NOT NULL) STRICT;
        CREATE INDEX events_of ON events (subject, number, sequence);
        CREATE TABLE files (id INTEGER PRIMARY KEY, path TEXT NOT NULL, sha256 BLOB NOT NULL, bytes INTEGER NOT NULL, after_event INTEGER NOT NULL) STRICT;
        CREATE TABLE pending_files (file INTEGER PRIMARY KEY REFERENCES files (id), part TEXT NOT NULL) STRICT;
        INSERT INTO about VALUES (1, '0123456789abcdef0123456789abcdef');
        INSERT INTO events VALUES (1, 'jar', 1, '2026-03-09T14:30:00', 'Mixed', 1, '{"ml":402.5,"shelf":"main","keeps":245}',
          x'9eed14d681035a8ece06ecfbd9a090f81249d240da5c699b82c662c11be83ca8');
        INSERT INTO events VALUES (2, 'jar', 1, '2026-04-01T09:00:00', 'Thinned', 2, '{"ml":97.5}',
          x'a6b32e08519f113fb423f3885d2ef005a330ee53aef3abc6b9976f172b173f37');
        PRAGMA user_version = 1;
        """;

    private const string Everything = "PRAGMA application_id; PRAGMA user_version; PRAGMA page_size; PRAGMA journal_mode; PRAGMA integrity_check; SELECT * FROM sqlite_schema ORDER BY name; SELECT * FROM about; SELECT id, reader, events, hex(chain) FROM index_state";

    public SchemaTests() => OutsideProgram.Need("sqlite3");

    [Theory]
    [InlineData(LedgerMode.Read)]
    [InlineData(LedgerMode.Write)]
    public void A_ledger_of_version_one_is_brought_up_to_date_with_its_list_of_jars(LedgerMode mode)
    {
        using var shop = Written(VersionOne);
        using (var ledger = shop.Open(mode))
        {
            Assert.Equal(["Mixed", "Thinned"], ledger.Look(view => view.EventsOf(Subject.Jar(1))).Require().Select(e => e.Kind));
            Assert.Equal([500.0], ledger.Look(view => view.ShelfLiquids("main").Select(liquid => liquid.Liquid.Milliliters)).Require());
            Assert.Equal(500, ledger.Look(view => view.Jar(1)!.Liquid.Milliliters).Require());
        }

        Assert.Equal((0, "5\nok"), OutsideProgram.Run("sqlite3", shop.Folder.Ledger, "PRAGMA user_version; PRAGMA integrity_check"));
        using var again = shop.Open();
        Assert.Equal(2, BenchWork.Mix(again).Require());
    }

    [Fact]
    public void A_ledger_of_a_newer_version_is_told_and_not_touched()
    {
        using var shop = Written(VersionOne.Replace("user_version = 1", "user_version = 6", StringComparison.Ordinal));
        var before = File.ReadAllBytes(shop.Folder.Ledger);
        foreach (var mode in Enum.GetValues<LedgerMode>())
        {
            var problem = Ledger.Open(shop.Folder, mode, new PlainJars()).Problems.Single();
            Assert.Equal("JL411", problem.Code);
            Assert.Contains("schema 6", problem.Message, StringComparison.Ordinal);
        }

        Assert.Equal(before, File.ReadAllBytes(shop.Folder.Ledger));
    }

    [Fact]
    public void Another_programs_database_is_told_and_not_touched()
    {
        using var shop = Written("CREATE TABLE songs (title TEXT); INSERT INTO songs VALUES ('one');");
        var before = File.ReadAllBytes(shop.Folder.Ledger);
        Assert.Equal("JL412", Ledger.Open(shop.Folder, LedgerMode.Write, new PlainJars()).Problems.Single().Code);
        Assert.Equal(before, File.ReadAllBytes(shop.Folder.Ledger));
    }

    /// <summary>After a new step, or another version of the list of jars: <c>JARLABEL_GOLDENS=write dotnet run --project tests/JarLabel.Tests -- --filter-class "*SchemaTests"</c>.
    /// Until then a new ledger is brought up to date like any older one.</summary>
    [Fact]
    public void The_empty_ledger_in_the_program_is_what_all_the_steps_make()
    {
        var embedded = Path.Combine(Checkout.Root, "src", "JarLabel.Store", "Schema", "empty-ledger.db");
        using var stepped = Written("PRAGMA application_id = 1247900236; PRAGMA journal_mode = WAL;");
        stepped.Open().Dispose();
        OutsideProgram.Run("sqlite3", stepped.Folder.Ledger, $"INSERT INTO about VALUES (1, '{new string('0', 32)}')");
        if (Environment.GetEnvironmentVariable("JARLABEL_GOLDENS") == "write")
            File.Copy(stepped.Folder.Ledger, embedded, overwrite: true);

        var copy = stepped.Beside("copy.db");
        File.Copy(embedded, copy);
        var everything = OutsideProgram.Run("sqlite3", stepped.Folder.Ledger, Everything);
        Assert.Contains("CREATE TABLE lives", everything.Said, StringComparison.Ordinal);
        Assert.Equal(everything, OutsideProgram.Run("sqlite3", copy, Everything));
    }

    [Fact]
    public void Every_new_ledger_is_whole_and_has_an_identity_of_its_own()
    {
        using var one = new TempShop();
        using var other = new TempShop();
        one.Open().Dispose();
        other.Open().Dispose();
        var ids = new[] { one, other }.Select(shop => OutsideProgram.Run("sqlite3", shop.Folder.Ledger, "SELECT ledger FROM about").Said).ToList();
        Assert.All(ids, id => Assert.Matches("^[0-9a-f]{32}$", id));
        Assert.Equal(3, ids.Append(new string('0', 32)).Distinct().Count());
        Assert.Equal((0, "wal\nok"), OutsideProgram.Run("sqlite3", one.Folder.Ledger, "PRAGMA journal_mode; PRAGMA integrity_check"));
    }

    private static TempShop Written(string sql)
    {
        var shop = new TempShop();
        Directory.CreateDirectory(shop.Folder.Path);
        Assert.Equal(0, OutsideProgram.Run("sqlite3", shop.Folder.Ledger, sql).Code);
        return shop;
    }
}
