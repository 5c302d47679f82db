namespace JarLabel.Store.Files;

/// <summary>The one lock on what a shop has settled: its settings, what was measured of its printers, its devices. Whoever changes one of
/// them reads, changes and writes within it, so that no change is lost between programs or threads. It is let go when its holder ends,
/// killed or not; the file that bears it is never removed.</summary>
public static class ShopLock
{
    /// <summary>Does something while nobody else changes what the shop has settled; makes the shop folder where there is none.</summary>
    /// <param name="folder">The shop.</param>
    /// <param name="work">What to do; it must not ask for the lock again.</param>
    public static Result<T> Within<T>(ShopFolder folder, Func<Result<T>> work)
        where T : notnull
    {
        return folder.Create().Then(Take).Then(held =>
        {
            using (held)
            {
                return work();
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
