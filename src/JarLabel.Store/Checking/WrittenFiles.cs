namespace JarLabel.Store.Checking;

/// <summary>Holds every written file against what the ledger says of it, while others go on writing. A file that does not fit at first
/// is looked at again between two looks into the ledger that say the same: only then is it known what it should be.</summary>
internal sealed class WrittenFiles(Database database, ShopFolder folder)
{
    private const int MostLooks = 200;

    /// <summary>Files that are there and as they were written.</summary>
    internal int Sound { get; private set; }

    /// <summary>Files that were changed.</summary>
    internal List<Problem> Changed { get; } = [];

    /// <summary>Files that are gone.</summary>
    internal List<Problem> Gone { get; } = [];

    /// <summary>Looks at them all; outside a transaction, so that each look into the ledger sees what is so by then.</summary>
    internal void Check()
    {
        foreach (var (path, hash) in Latest(database))
        {
            if (DurableFile.Hash(folder.Full(path)).AsSpan().SequenceEqual(hash))
            {
                Sound++;
            }
            else
            {
                LookAgain(path);
            }
        }
    }

    /// <summary>What the ledger says of each file as it was written last.</summary>
    internal static IReadOnlyList<(string Path, byte[] Hash)> Latest(Database database) =>
        database.List("SELECT path, sha256 FROM files f WHERE id = (SELECT max(id) FROM files WHERE path = f.path)", row => (row.GetString(0), (byte[])row.GetValue(1)));

    private void LookAgain(string path)
    {
        var place = folder.Full(path);
        var (states, exists, hash) = SettledLook(path, place);
        if (states.Any(state => state.Hash.AsSpan().SequenceEqual(hash)))
        {
            Sound++;
        }
        else if (exists)
        {
            Changed.Add(VerifyProblems.FileChanged(place));
        }
        else if (states.Any(state => !state.Waits))
        {
            Gone.Add(VerifyProblems.FileGone(place));
        }
    }

    /// <summary>A look at the file during which the ledger did not change its mind about it.</summary>
    private (List<State> States, bool Exists, byte[] Hash) SettledLook(string path, string place)
    {
        var before = States(path);
        for (var look = 1; ; look++)
        {
            var exists = File.Exists(place);
            var hash = DurableFile.Hash(place);
            var after = States(path);
            if (after.Select(Mark).SequenceEqual(before.Select(Mark)) || look == MostLooks)
            {
                return (after, exists, hash);
            }

            before = after;
        }
    }

    /// <summary>What the file may be now: those writings that still wait to come into their place, and the last one that is there.</summary>
    private List<State> States(string path)
    {
        const string all = "SELECT id, sha256, EXISTS (SELECT 1 FROM pending_files WHERE file = id) FROM files WHERE path = $1 ORDER BY id DESC";
        var states = database.List(all, row => new State(row.GetInt64(0), (byte[])row.GetValue(1), row.GetBoolean(2)), path);
        var settled = states.FindIndex(state => !state.Waits);
        return settled < 0 ? states : states[..(settled + 1)];
    }

    private static (long, bool) Mark(State state) => (state.Id, state.Waits);

    private sealed record State(long Id, byte[] Hash, bool Waits);
}
