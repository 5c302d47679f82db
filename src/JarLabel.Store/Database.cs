using System.Diagnostics;

namespace JarLabel.Store;

/// <summary>One connection to the ledger's database. Statements are prepared once; their values are <c>$1</c>, <c>$2</c> ...
/// Faults come out as <see cref="SqliteException"/> and become problems at the ledger's door.</summary>
internal sealed class Database : IDisposable
{
    private static readonly Lazy<bool> Found = new(SqliteFile.LookBesideProgram);

    private readonly SqliteConnection connection;
    private readonly Dictionary<string, SqliteCommand> prepared = new(StringComparer.Ordinal);

    private Database(SqliteConnection connection) => this.connection = connection;

    /// <summary>Opens a database file for itself alone, to look at it with its log: no other program may have it open, the shared list of
    /// the log is not touched, and closing it leaves both files as they are. Busy at once when somebody has it.</summary>
    /// <param name="file">The database file.</param>
    /// <param name="logStays">False where there is no log before, so that the empty one that SQLite makes goes again.</param>
    internal static Database OpenHeld(string file, bool logStays = true)
    {
        var database = Open(file, SqliteOpenMode.ReadWrite);
        database.WaitWhenBusy(TimeSpan.Zero);
        raw.sqlite3_db_config(database.connection.Handle, raw.SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, logStays ? 1 : 0, out _);
        database.Execute("PRAGMA locking_mode = EXCLUSIVE");
        return database;
    }

    /// <summary>Opens a database file as it stands, without its log, on a medium that need not be writable.</summary>
    internal static Database OpenAlone(string file) => Open($"file:{Uri.EscapeDataString(file)}?immutable=1", SqliteOpenMode.ReadOnly);

    /// <summary>Opens the bytes of a database, which SQLite then holds in memory.</summary>
    internal static Database OpenBytes(byte[] bytes)
    {
        var database = Open(":memory:", SqliteOpenMode.ReadWrite); // in the mode for memory, copies of it would be there too
        var held = raw.sqlite3_malloc64(bytes.Length);
        Marshal.Copy(bytes, 0, held, bytes.Length);
        const int flags = raw.SQLITE_DESERIALIZE_FREEONCLOSE | raw.SQLITE_DESERIALIZE_RESIZEABLE;
        SqliteException.ThrowExceptionForRC(raw.sqlite3_deserialize(database.connection.Handle, "main", held, bytes.Length, bytes.Length, flags), database.connection.Handle);
        return database;
    }

    /// <summary>True when the file could only be opened to read.</summary>
    internal bool CannotWrite => raw.sqlite3_db_readonly(connection.Handle, "main") == 1;

    /// <summary>Opens a database file, or <c>:memory:</c>, or a <c>file:</c> address.</summary>
    internal static Database Open(string source, SqliteOpenMode mode)
    {
        _ = Found.Value;
        var settings = new SqliteConnectionStringBuilder { DataSource = source, Mode = mode, Pooling = false, DefaultTimeout = 1 };
        var connection = new SqliteConnection(settings.ConnectionString);
        try
        {
            connection.Open();
            var database = new Database(connection);
            database.WaitWhenBusy(Patience.ToReach);
            database.Execute("PRAGMA trusted_schema = OFF");
            return database;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    /// <summary>Takes the write lock, trying every few milliseconds so that two busy writers get their turns evenly.
    /// False when another program kept it for the whole time.</summary>
    internal bool TryBeginWriting(TimeSpan limit)
    {
        WaitWhenBusy(TimeSpan.Zero);
        try
        {
            var since = Stopwatch.GetTimestamp();
            while (!TryBeginOnce())
            {
                if (Stopwatch.GetElapsedTime(since) > limit)
                {
                    return false;
                }

                Thread.Sleep(Random.Shared.Next(1, 6));
            }

            return true;
        }
        finally
        {
            WaitWhenBusy(Patience.ToReach);
        }
    }

    /// <summary>Ends the transaction by keeping its work.</summary>
    internal void Commit() => Execute("COMMIT");

    /// <summary>Ends the transaction, if one is still open, by dropping its work. SQLite itself has already ended it after a full disk.</summary>
    internal void RollBack()
    {
        if (raw.sqlite3_get_autocommit(connection.Handle) == 0)
        {
            Execute("ROLLBACK");
        }
    }

    internal void Execute(string sql, params ReadOnlySpan<object?> values) => Prepared(sql, values).ExecuteNonQuery();

    /// <summary>Runs a script of several statements, once.</summary>
    internal void Run(string script) => SqliteException.ThrowExceptionForRC(raw.sqlite3_exec(connection.Handle, script), connection.Handle);

    internal long Number(string sql, params ReadOnlySpan<object?> values) =>
        Convert.ToInt64(Prepared(sql, values).ExecuteScalar() ?? 0L, CultureInfo.InvariantCulture);

    internal List<T> List<T>(string sql, Func<SqliteDataReader, T> read, params ReadOnlySpan<object?> values)
    {
        var rows = new List<T>();
        using var reader = Prepared(sql, values).ExecuteReader();
        while (reader.Read())
        {
            rows.Add(read(reader));
        }

        return rows;
    }

    /// <summary>Rows one by one, however many there are; another statement may run in between.</summary>
    internal IEnumerable<T> Stream<T>(string sql, Func<SqliteDataReader, T> read, params object?[] values)
    {
        using var command = New(sql);
        Fill(command, values);
        using var reader = command.ExecuteReader();
        while (reader.Read())
        {
            yield return read(reader);
        }
    }

    public void Dispose()
    {
        foreach (var command in prepared.Values)
        {
            command.Dispose();
        }

        connection.Dispose();
    }

    private void WaitWhenBusy(TimeSpan limit) => raw.sqlite3_busy_timeout(connection.Handle, (int)limit.TotalMilliseconds);

    private bool TryBeginOnce()
    {
        var code = raw.sqlite3_exec(connection.Handle, "BEGIN IMMEDIATE");
        if ((code & 0xFF) is raw.SQLITE_BUSY)
        {
            return false;
        }

        SqliteException.ThrowExceptionForRC(code, connection.Handle);
        return true;
    }

    private SqliteCommand Prepared(string sql, ReadOnlySpan<object?> values)
    {
        if (!prepared.TryGetValue(sql, out var command))
        {
            command = New(sql);
            prepared.Add(sql, command);
        }

        Fill(command, values);
        return command;
    }

    private SqliteCommand New(string sql)
    {
        var command = connection.CreateCommand();
        command.CommandText = sql;
        return command;
    }

    private static void Fill(SqliteCommand command, ReadOnlySpan<object?> values)
    {
        while (command.Parameters.Count < values.Length)
        {
            var name = string.Create(CultureInfo.InvariantCulture, $"${command.Parameters.Count + 1}");
            command.Parameters.Add(new SqliteParameter { ParameterName = name });
        }

        for (var i = 0; i < values.Length; i++)
        {
            command.Parameters[i].Value = values[i] ?? DBNull.Value;
        }
    }
}

/// <summary>Where SQLite's own library is. A published program has it beside it: found at once, where the system would first look for it
/// under another name in forty other places.</summary>
internal static class SqliteFile
{
    private const string Library = "e_sqlite3";

    private static string Name => OperatingSystem.IsWindows() ? Library + ".dll" : OperatingSystem.IsMacOS() ? $"lib{Library}.dylib" : $"lib{Library}.so";

    /// <summary>To be called once, before the first database is opened.</summary>
    internal static bool LookBesideProgram()
    {
        NativeLibrary.SetDllImportResolver(typeof(SQLite3Provider_e_sqlite3).Assembly, (library, _, _) =>
            library == Library && NativeLibrary.TryLoad(Path.Combine(AppContext.BaseDirectory, Name), out var found) ? found : 0);
        return true;
    }
}
