namespace JarLabel.Store.Schema;

/// <summary>The ledger's tables, as the steps that built them. A step that was ever released is never edited: a change is a new step.
/// A new ledger takes all of them; an older one those it lacks, each in one transaction.</summary>
internal static class Migrations
{
    /// <summary>"JarL": how other programs tell this database from any other.</summary>
    internal const int ApplicationId = 0x4A61724C;

    /// <summary>What keeps events and written files as they are, from outside too. The insert guards also stop INSERT OR REPLACE, which
    /// would remove a row without asking the delete guard.</summary>
    internal static IReadOnlyDictionary<string, string> Guards { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["events_in_order"] = "CREATE TRIGGER events_in_order BEFORE INSERT ON events WHEN NEW.sequence IS NOT (SELECT coalesce(max(sequence), 0) + 1 FROM events) BEGIN SELECT RAISE(ABORT, 'an event is only ever added at the end'); END",
        ["events_stay"] = "CREATE TRIGGER events_stay BEFORE UPDATE ON events BEGIN SELECT RAISE(ABORT, 'an event is never changed'); END",
        ["events_remain"] = "CREATE TRIGGER events_remain BEFORE DELETE ON events BEGIN SELECT RAISE(ABORT, 'an event is never removed'); END",
        ["files_in_order"] = "CREATE TRIGGER files_in_order BEFORE INSERT ON files WHEN NEW.id IS NOT (SELECT coalesce(max(id), 0) + 1 FROM files) BEGIN SELECT RAISE(ABORT, 'a written file is only ever added at the end'); END",
        ["files_stay"] = "CREATE TRIGGER files_stay BEFORE UPDATE ON files BEGIN SELECT RAISE(ABORT, 'what was written is never changed'); END",
        ["files_remain"] = "CREATE TRIGGER files_remain BEFORE DELETE ON files BEGIN SELECT RAISE(ABORT, 'what was written is never removed'); END",
    };

    /// <summary>The schema that this program writes and reads.</summary>
    internal static int Newest => Steps.Count;

    internal static IReadOnlyList<string> Steps { get; } = [EventsAndFiles + string.Join(";\n", Guards.Values), DerivedIndex, TestedIndex, ShelfLiquids, Lives];

    /// <summary>Version 1: the facts. <c>chain</c> is explained at <see cref="Checking.EventChain"/>.</summary>
    private const string EventsAndFiles = """
        CREATE TABLE about (
          id INTEGER PRIMARY KEY CHECK (id = 1),
          ledger TEXT NOT NULL
        ) STRICT;
        CREATE TABLE events (
          sequence INTEGER PRIMARY KEY,
          subject TEXT NOT NULL CHECK (subject IN ('jar', 'bag', 'bottle', 'sheet')),
          number INTEGER NOT NULL CHECK (number > 0),
          at TEXT NOT NULL,
          kind TEXT NOT NULL,
          revision INTEGER NOT NULL CHECK (revision >= 0),
          body TEXT NOT NULL,
          chain BLOB NOT NULL CHECK (length(chain) = 32)
        ) STRICT;
        CREATE INDEX events_of ON events (subject, number, sequence);
        CREATE TABLE files (
          id INTEGER PRIMARY KEY,
          path TEXT NOT NULL,
          sha256 BLOB NOT NULL CHECK (length(sha256) = 32),
          bytes INTEGER NOT NULL,
          after_event INTEGER NOT NULL
        ) STRICT;
        CREATE INDEX files_by_path ON files (path, id);
        CREATE TABLE pending_files (
          file INTEGER PRIMARY KEY REFERENCES files (id),
          part TEXT NOT NULL
        ) STRICT;

        """;

    /// <summary>Version 4: what stands on each shelf by solvent and cut, so that a shelf of very many jars is known by its few kinds. A
    /// cut counts as the hundredth of a pound below it, thus never with less alcohol than it has; an empty jar as -1.</summary>
    private const string ShelfLiquids = """
        DROP TRIGGER jar_put;
        DROP TRIGGER jar_taken;
        DROP TABLE shelf_totals;
        CREATE TABLE shelf_liquids (
          shelf TEXT NOT NULL,
          solvent TEXT NOT NULL,
          hundredths INTEGER NOT NULL,
          jars INTEGER NOT NULL,
          microliters INTEGER NOT NULL,
          PRIMARY KEY (shelf, solvent, hundredths)
        ) STRICT, WITHOUT ROWID;
        INSERT INTO shelf_liquids
          SELECT shelf, solvent, coalesce(CAST(cut * 100 + 0.001 AS INTEGER), -1), count(*), sum(CAST(round(milliliters * 1000) AS INTEGER))
            FROM jars WHERE on_shelf = 1 GROUP BY 1, 2, 3;
        CREATE TRIGGER jar_put AFTER INSERT ON jars WHEN NEW.on_shelf = 1 BEGIN
          INSERT INTO shelf_liquids
            VALUES (NEW.shelf, NEW.solvent, coalesce(CAST(NEW.cut * 100 + 0.001 AS INTEGER), -1), 1, CAST(round(NEW.milliliters * 1000) AS INTEGER))
            ON CONFLICT (shelf, solvent, hundredths) DO UPDATE SET jars = jars + 1, microliters = microliters + excluded.microliters;
        END;
        CREATE TRIGGER jar_taken AFTER DELETE ON jars WHEN OLD.on_shelf = 1 BEGIN
          UPDATE shelf_liquids SET jars = jars - 1, microliters = microliters - CAST(round(OLD.milliliters * 1000) AS INTEGER)
            WHERE shelf = OLD.shelf AND solvent = OLD.solvent AND hundredths = coalesce(CAST(OLD.cut * 100 + 0.001 AS INTEGER), -1);
        END;
        """;

    /// <summary>Version 5: how many events everything has, so that those which a damaged index no longer finds are missed.</summary>
    private const string Lives = """
        CREATE TABLE lives (
          subject TEXT NOT NULL,
          number INTEGER NOT NULL,
          events INTEGER NOT NULL,
          PRIMARY KEY (subject, number)
        ) STRICT, WITHOUT ROWID;
        INSERT INTO lives SELECT subject, number, count(*) FROM events NOT INDEXED GROUP BY 1, 2;
        CREATE TRIGGER event_counted AFTER INSERT ON events BEGIN
          INSERT INTO lives VALUES (NEW.subject, NEW.number, 1) ON CONFLICT (subject, number) DO UPDATE SET events = events + 1;
        END;
        """;

    /// <summary>Version 3: the tested jars, few among many, are found without looking at the others.</summary>
    private const string TestedIndex = "CREATE INDEX jars_by_test ON jars (tested, number) WHERE tested IS NOT NULL";

    /// <summary>Version 2: what is derived. Totals count whole microlitres, so that adding and taking away never drifts.</summary>
    private const string DerivedIndex = """
        CREATE TABLE index_state (
          id INTEGER PRIMARY KEY CHECK (id = 1),
          reader INTEGER NOT NULL,
          events INTEGER NOT NULL,
          chain BLOB NOT NULL
        ) STRICT;
        CREATE TABLE jars (
          number INTEGER PRIMARY KEY,
          revision INTEGER NOT NULL,
          events INTEGER NOT NULL,
          shelf TEXT NOT NULL,
          grade TEXT NOT NULL,
          solvent TEXT NOT NULL,
          cut REAL,
          milliliters REAL NOT NULL,
          mixed TEXT NOT NULL,
          ready TEXT NOT NULL,
          test_from TEXT NOT NULL,
          use_by TEXT NOT NULL,
          tested TEXT,
          test_passed INTEGER,
          on_shelf INTEGER NOT NULL
        ) STRICT;
        CREATE INDEX jars_by_use ON jars (use_by, number) WHERE on_shelf = 1;
        CREATE INDEX jars_by_shelf ON jars (shelf, use_by, number) WHERE on_shelf = 1;
        CREATE TABLE shelf_totals (
          shelf TEXT PRIMARY KEY,
          jars INTEGER NOT NULL,
          microliters INTEGER NOT NULL
        ) STRICT, WITHOUT ROWID;
        CREATE TRIGGER jar_put AFTER INSERT ON jars WHEN NEW.on_shelf = 1 BEGIN
          INSERT INTO shelf_totals VALUES (NEW.shelf, 1, CAST(round(NEW.milliliters * 1000) AS INTEGER))
            ON CONFLICT (shelf) DO UPDATE SET jars = jars + 1, microliters = microliters + excluded.microliters;
        END;
        CREATE TRIGGER jar_taken AFTER DELETE ON jars WHEN OLD.on_shelf = 1 BEGIN
          UPDATE shelf_totals SET jars = jars - 1, microliters = microliters - CAST(round(OLD.milliliters * 1000) AS INTEGER)
            WHERE shelf = OLD.shelf;
        END;
        CREATE TABLE sheets (
          number INTEGER PRIMARY KEY,
          stock TEXT NOT NULL,
          open INTEGER NOT NULL
        ) STRICT;
        CREATE INDEX sheets_open ON sheets (stock, number) WHERE open = 1;
        """;
}
