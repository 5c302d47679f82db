namespace JarLabel.Store.Files;

/// <summary>The one lock on what a shop has settled: its settings, what was measured of its printers, its devices. Whoever changes one of
/// them reads, changes and writes within it, so that no change is lost between programs or threads. It is let go when its holder ends,
/// killed or not; the file that bears it is never removed.</summary>
public static class ShopLock
{
    /// <summary>The locks that this thread holds.</summary>
    [ThreadStatic]
    private static HashSet<string>? mine;

    /// <summary>Does something while nobody else changes what the shop has settled; makes the shop folder where there is none.</summary>
    /// <param name="folder">The shop.</param>
    /// <param name="work">What to do, on this thread; where it asks for the lock again it has it.</param>
    public static Result<T> Within<T>(ShopFolder folder, Func<Result<T>> work)
        where T : notnull
    {
        mine ??= new(StringComparer.Ordinal);
        return mine.Contains(folder.Lock) ? work() : folder.Create().Then(Take).Then(held =>
        {
            using (held)
            {
                mine.Add(folder.Lock);
                try
                {
                    return work();
                }
                finally
                {
                    mine.Remove(folder.Lock);
                }
            }
        });
    }

    private static Result<FileStream> Take(ShopFolder folder)
    {
        try
        {
            return PatientFile.Open(folder.Lock, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, Patience.ToWrite) is { } held
                ? held
                : FileProblems.SettingsHeld(folder.Lock, Patience.ToWrite);
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return StoreProblems.SettingsNotWritten(folder.Lock, fault.Message);
        }
    }
}
