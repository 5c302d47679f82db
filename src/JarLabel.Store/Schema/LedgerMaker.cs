namespace JarLabel.Store.Schema;

/// <summary>Makes a new ledger aside and moves it into place when it is whole, so that a ledger that is there is always a real one:
/// an empty or headless file is then damage, never a ledger in the making.</summary>
internal static class LedgerMaker
{
    /// <summary>Makes the ledger unless another program is quicker.</summary>
    internal static Result<string> Make(ShopFolder folder)
    {
        var aside = Path.Combine(folder.Staging, $"{Guid.NewGuid():N}.new");
        try
        {
            Directory.CreateDirectory(folder.Staging);
            Fill(aside);
            File.Move(aside, folder.Ledger, overwrite: false);
            FolderSync.Flush(folder.Path);
            return folder.Ledger;
        }
        catch (Exception) when (File.Exists(folder.Ledger))
        {
            return folder.Ledger;
        }
        catch (PathTooLongException)
        {
            return StoreProblems.ShopNotReachable(folder.Path, "its name is too long for a file in it.");
        }
        catch (IOException fault) when (File.Exists(aside))
        {
            return DiskCause.Told(folder.Ledger, fault, aside);
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return StoreProblems.ShopReadOnly(folder.Path);
        }
        finally
        {
            DurableFile.DeleteQuietly(aside);
        }
    }

    private static void Fill(string aside)
    {
        using var made = File.OpenHandle(aside, FileMode.CreateNew, FileAccess.Write);
        EmptyLedger.Write(made);
    }
}
