namespace JarLabel.Tests.Store;

/// <summary>The database as the sqlite3 command line, which knows nothing of this project, sees it.</summary>
public sealed class GuardTests
{
    public GuardTests() => OutsideProgram.Need("sqlite3");

    [Fact]
    public void Another_program_finds_the_database_sound_in_write_ahead_mode_and_marked_as_ours()
    {
        using var shop = TempShop.With(jars: 3);
        var said = OutsideProgram.Run("sqlite3", shop.Folder.Ledger, "PRAGMA integrity_check; PRAGMA foreign_key_check; PRAGMA journal_mode; PRAGMA application_id; PRAGMA user_version");
        Assert.Equal((0, "ok\nwal\n1247900236\n5"), said);
    }

    [Theory]
    [InlineData("UPDATE events SET body = '{}' WHERE sequence = 2", "never changed")]
    [InlineData("DELETE FROM events WHERE sequence = 12", "never removed")]
    [InlineData("DELETE FROM events", "never removed")]
    [InlineData("INSERT OR REPLACE INTO events VALUES (2, 'jar', 1, '2026-03-09T14:30', 'Mixed', 1, '{}', zeroblob(32))", "only ever added at the end")]
    [InlineData("REPLACE INTO events VALUES (12, 'jar', 1, '2026-03-09T14:30', 'Mixed', 1, '{}', zeroblob(32))", "only ever added at the end")]
    [InlineData("INSERT INTO events VALUES (14, 'jar', 1, '2026-03-09T14:30', 'Mixed', 1, '{}', zeroblob(32))", "only ever added at the end")]
    [InlineData("UPDATE files SET sha256 = zeroblob(32)", "never changed")]
    [InlineData("DELETE FROM files", "never removed")]
    [InlineData("REPLACE INTO files VALUES (1, 'labels/1.pdf', zeroblob(32), 1, 1)", "only ever added at the end")]
    public void Another_program_cannot_rewrite_what_happened(string sql, string refusal)
    {
        using var shop = TempShop.With(jars: 3);
        var before = Dump(shop);
        var (code, said) = OutsideProgram.Run("sqlite3", shop.Folder.Ledger, sql);
        Assert.NotEqual(0, code);
        Assert.Contains(refusal, said, StringComparison.Ordinal);
        Assert.Equal(before, Dump(shop));
    }

    [Theory]
    [InlineData("DROP TRIGGER events_stay; UPDATE events SET body = replace(body, '402.5', '802.5') WHERE sequence = 5", "JL418 JL461")]
    [InlineData("DROP TRIGGER events_stay; UPDATE events SET body = replace(body, '1.pdf', '9.pdf') WHERE sequence = 2", "JL418 JL461")]
    [InlineData("DROP TRIGGER events_remain; DELETE FROM events WHERE sequence = 12", "JL419 JL425 JL461")]
    [InlineData("DROP TRIGGER events_remain; DELETE FROM events WHERE number = 2", "JL418 JL425 JL461 JL462 JL464")]
    [InlineData("UPDATE jars SET milliliters = 1 WHERE number = 1", "JL463 JL465")]
    [InlineData("DELETE FROM jars WHERE number = 3", "JL463")]
    [InlineData("UPDATE shelf_liquids SET jars = 4", "JL465")]
    [InlineData("DELETE FROM shelf_liquids", "JL465")]
    [InlineData("UPDATE jars SET use_by = 'soon' WHERE number = 1", "JL421")]
    public void A_rewriting_by_force_is_told(string sql, string codes)
    {
        using var shop = TempShop.With(jars: 3);
        Assert.Equal((0, ""), OutsideProgram.Run("sqlite3", shop.Folder.Ledger, sql));
        Assert.Equal(codes, string.Join(' ', shop.Verify().Damage.Select(problem => problem.Code).Distinct().Order()));
    }

    [Theory]
    [InlineData("DELETE FROM sheets", "JL478")]
    [InlineData("UPDATE sheets SET open = 1 - open WHERE number = 2", "JL478")]
    [InlineData("UPDATE sheets SET stock = 'a4-2x4' WHERE number = 1", "JL478")]
    [InlineData("INSERT INTO sheets VALUES (9, 'letter-2x4', 1)", "JL478")]
    public void A_list_of_sheets_that_is_not_as_their_events_is_told(string sql, string code)
    {
        using var shop = TempShop.With(jars: 3);
        using (var ledger = shop.Open())
        {
            ledger.Record<int>(step => step.Sheets.Take("letter-2x4", 8, 10, null, "2026-03-09T14:30:00").Then<int>(places => places.Count)).Require();
        }

        Assert.Empty(shop.Verify().Damage);
        Assert.Equal((0, ""), OutsideProgram.Run("sqlite3", shop.Folder.Ledger, sql));
        Assert.Equal(code, string.Join(' ', shop.Verify().Damage.Select(problem => problem.Code).Distinct()));
    }

    private static string Dump(TempShop shop) => OutsideProgram.Run("sqlite3", shop.Folder.Ledger, "SELECT *, hex(chain) FROM events; SELECT *, hex(sha256) FROM files").Said;
}
