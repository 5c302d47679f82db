namespace JarLabel.Tests.Store;

/// <summary>A shop as a killed program leaves it: the log beside the ledger holds steps that are not in the ledger's own file yet.</summary>
internal sealed class CrashedShop : IDisposable
{
    private readonly TempShop before;
    private readonly string root = Directory.CreateTempSubdirectory("jarlabel-crash-").FullName;

    /// <param name="jars">How many jars the ledger's own file has.</param>
    /// <param name="logged">How many more the log has.</param>
    /// <param name="path">Where the shop is; null for a folder of its own.</param>
    /// <param name="sql">What somebody did to the log from outside.</param>
    /// <param name="sqlBefore">What somebody did to the ledger from outside, before the log was begun.</param>
    public CrashedShop(int jars, int logged, string? path = null, string? sql = null, string? sqlBefore = null)
    {
        before = TempShop.With(jars);
        Outside(sqlBefore);
        Backup = before.Beside("backup.db");
        using var ledger = before.Open();
        if (sqlBefore is null)
        {
            ledger.Backup(Backup).Require();
        }

        for (var i = 0; i < logged; i++)
        {
            BenchWork.Mix(ledger).Require();
        }

        Outside(sql);
        Folder = ShopFolder.At(path ?? Path.Combine(root, "shop")).Require();
        Directory.CreateDirectory(Folder.Labels);
        foreach (var end in (string[])["", "-wal", "-shm"])
        {
            File.Copy(before.Folder.Ledger + end, Folder.Ledger + end);
        }

        foreach (var label in Directory.EnumerateFiles(before.Folder.Labels))
        {
            File.Copy(label, Path.Combine(Folder.Labels, Path.GetFileName(label)));
        }

        Assert.True(new FileInfo(Folder.Ledger + "-wal").Length > 4096);
    }

    public ShopFolder Folder { get; }

    /// <summary>A backup from before the logged steps.</summary>
    public string Backup { get; }

    public string Beside(string name) => Path.Combine(root, name);

    private void Outside(string? sql)
    {
        if (sql is not null)
        {
            OutsideProgram.Need("sqlite3");
            Assert.Equal((0, ""), OutsideProgram.Run("sqlite3", before.Folder.Ledger, sql));
        }
    }

    /// <summary>Every file of the shop with its bytes.</summary>
    public string Bytes() => string.Join('\n', Directory.EnumerateFiles(Folder.Path, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
        .Select(file => $"{Path.GetRelativePath(Folder.Path, file)} {Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(file)))}"));

    public int LastJar()
    {
        using var ledger = Ledger.Open(Folder, LedgerMode.Read, new PlainJars()).Require();
        return ledger.Look(view => view.EventsOf(SubjectKind.Jar).Max(row => row.Of.Number)).Require();
    }

    public string Refused(LedgerMode mode)
    {
        var opened = Ledger.Open(Folder, mode, new PlainJars());
        Assert.False(opened.Ok);
        return opened.Problems.Single().Code;
    }

    public void Dispose()
    {
        before.Dispose();
        Directory.Delete(root, recursive: true);
    }
}
