namespace JarLabel.Store.Shops;

/// <summary>The folder that is the shop's memory: the ledger, the settings, what was printed, and the shop's own catalog and layouts.</summary>
public sealed class ShopFolder
{
    /// <summary>The environment variable that names the shop folder when <c>--shop</c> does not.</summary>
    public const string Variable = "JARLABEL_SHOP";

    private ShopFolder(string path, bool named)
    {
        Path = path;
        IsNamed = named;
    }

    /// <summary>The full path.</summary>
    public string Path { get; }

    /// <summary>True when somebody named this folder; false for the platform's own place, which may not exist yet.</summary>
    public bool IsNamed { get; }

    /// <summary>The database of all that happened.</summary>
    public string Ledger => Inside("ledger.db");

    /// <summary>The file that the database is: where <see cref="Ledger"/> is a link, what it leads to. SQLite keeps the log beside that.</summary>
    internal string LedgerFile
    {
        get
        {
            var file = new FileInfo(Ledger);
            try
            {
                return file.LinkTarget is null ? Ledger : file.ResolveLinkTarget(returnFinalTarget: true)?.FullName ?? Ledger;
            }
            catch (IOException)
            {
                return Ledger;
            }
        }
    }

    /// <summary>Held while a backup is put in place.</summary>
    internal string RestoreLock => Inside("restore.lock");

    /// <summary>The highest numbers that were given out; see <see cref="Files.GivenNumbers"/>.</summary>
    internal string Numbers => Inside("numbers.txt");

    /// <summary>The shop's settings.</summary>
    public string Settings => Inside("shop.json");

    /// <summary>What was measured of printers.</summary>
    public string Calibrations => Inside("calibration.json");

    /// <summary>The devices that may record.</summary>
    public string Devices => Inside("devices.json");

    /// <summary>The certificate with which pages are served encrypted, and its key.</summary>
    public string Certificate => Inside("certificate.pem");

    /// <summary>The labels, cards and notices that were written.</summary>
    public string Labels => Inside("labels");

    /// <summary>True for a file in the shop's own folder of labels; one may have been written anywhere.</summary>
    public bool HasAmongLabels(string file) => file.StartsWith(Labels + System.IO.Path.DirectorySeparatorChar, StringComparison.Ordinal);

    /// <summary>The shop's own grades and solvents.</summary>
    public string Catalog => Inside("catalog");

    /// <summary>The shop's own sheets and label designs.</summary>
    public string Layouts => Inside("layouts");

    /// <summary>True when the folder is there.</summary>
    public bool Exists => Directory.Exists(Path);

    /// <summary>What is held while settings are changed; it holds nothing itself.</summary>
    internal string Lock => Inside("shop.lock");

    /// <summary>Notes of files that are being written; empty when nobody is at work.</summary>
    internal string Staging => Inside("staging");

    /// <summary>The shop folder: <c>--shop</c>, else <see cref="Variable"/>, else <c>jarlabel</c> in the user's data folder. A folder that is
    /// not there yet is fine; a file in its place is not.</summary>
    /// <param name="option">What <c>--shop</c> says; null or empty when it was not given.</param>
    /// <param name="environment">Looks up an environment variable.</param>
    public static Result<ShopFolder> Find(string? option, Func<string, string?> environment)
    {
        var named = string.IsNullOrWhiteSpace(option) ? environment(Variable) : option;
        return string.IsNullOrWhiteSpace(named) ? At(PlatformPlace(), named: false) : At(named, named: true);
    }

    /// <summary>A shop folder at a path.</summary>
    public static Result<ShopFolder> At(string path) => At(path, named: true);

    /// <summary>The folder when it is there, or when nobody named it: the platform's own place may be new.</summary>
    public Result<ShopFolder> DemandThere() => Exists || !IsNamed ? this : StoreProblems.NoSuchShop(Path);

    /// <summary>Makes the folder and its rooms where they are missing.</summary>
    public Result<ShopFolder> Create()
    {
        try
        {
            foreach (var room in (string[])[Path, Labels, Catalog, Layouts])
            {
                Directory.CreateDirectory(room);
            }

            return this;
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return Exists ? StoreProblems.ShopReadOnly(Path) : StoreProblems.ShopNotReachable(Path, fault.Message);
        }
    }

    /// <summary>The full path of a path that may be relative to this folder.</summary>
    public string Full(string path) => System.IO.Path.GetFullPath(path, Path);

    /// <summary>How the ledger writes a path: inside this folder relative to it and with <c>/</c>, so that the folder can be moved;
    /// elsewhere in full.</summary>
    internal string Shortened(string full) =>
        Holds(full) ? System.IO.Path.GetRelativePath(Path, full).Replace('\\', '/') : full;

    /// <summary>True when the path lies inside this folder.</summary>
    internal bool Holds(string full) =>
        full.StartsWith(Path + System.IO.Path.DirectorySeparatorChar, StringComparison.Ordinal);

    private string Inside(string name) => System.IO.Path.Combine(Path, name);

    private static Result<ShopFolder> At(string path, bool named)
    {
        try
        {
            var full = System.IO.Path.TrimEndingDirectorySeparator(System.IO.Path.GetFullPath(path));
            return File.Exists(full) ? StoreProblems.ShopIsAFile(full) : new ShopFolder(full, named);
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault) || fault is ArgumentException or NotSupportedException)
        {
            return StoreProblems.ShopNotReachable(path, fault.Message);
        }
    }

    private static string PlatformPlace() => System.IO.Path.Combine(
        Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify), "jarlabel");
}
