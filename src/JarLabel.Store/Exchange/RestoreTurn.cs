namespace JarLabel.Store.Exchange;

/// <summary>While a backup is put in a ledger's place there is a moment without a ledger. Only one program does that at a time, and whoever finds
/// none waits for it. The file stays, since a lock on a name that is taken away guards nothing.</summary>
internal static class RestoreTurn
{
    /// <summary>The turn to restore, or null when another program keeps it; throws what the disk throws.</summary>
    internal static FileStream? Take(ShopFolder folder) => Wait(folder.RestoreLock, FileMode.OpenOrCreate);

    /// <summary>How often a file was moved from or to the ledger's place; each leaves a byte.</summary>
    internal static long Count(ShopFolder folder) => new FileInfo(folder.RestoreLock) is { Exists: true } file ? file.Length : 0;

    /// <summary>Waits until nobody restores; null where nobody ever did, or nothing can be locked.</summary>
    internal static FileStream? WaitFor(ShopFolder folder)
    {
        try
        {
            return File.Exists(folder.RestoreLock) ? Wait(folder.RestoreLock, FileMode.Open) : null;
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return null;
        }
    }

    private static FileStream? Wait(string path, FileMode mode) =>
        PatientFile.Open(path, mode, FileAccess.ReadWrite, FileShare.None, Patience.ToWrite);
}
