using System.Text.RegularExpressions;

namespace JarLabel.Store.Exchange;

/// <summary>The shop's own files that a backup carries beside the ledger: settings, what was measured of printers, the shop's grades, cans,
/// sheets and designs, and what was printed and is still as it was. They lie in a table of the backup, which is a ledger all the same.</summary>
internal static partial class CarriedFiles
{
    /// <summary>Printed files above this are left out: they are runs of labels, which can be printed again.</summary>
    private const long MostPrinted = 64L * 1024 * 1024;

    private const string Labels = "labels/";
    private static readonly string[] Rooms = ["catalog", "layouts/sheets", "layouts/labels"];

    /// <summary>Puts them into a backup that is being written.</summary>
    internal static void Put(Database backup, ShopFolder folder)
    {
        backup.Execute("PRAGMA journal_mode = MEMORY");
        backup.Execute("DROP TABLE IF EXISTS shop_files");
        backup.Execute("CREATE TABLE shop_files (path TEXT PRIMARY KEY, bytes BLOB NOT NULL, sha256 BLOB NOT NULL) STRICT");
        foreach (var path in Own(folder))
        {
            var bytes = Read(folder.Full(path));
            Insert(backup, path, bytes, Sha256.Of(bytes));
        }

        foreach (var (path, written) in WrittenFiles.Latest(backup).Where(file => IsPrinted(folder, file.Path)))
        {
            if (ReadIfWhole(folder.Full(path), written) is { } bytes)
            {
                Insert(backup, path, bytes, written);
            }
        }
    }

    /// <summary>The paths of those that a backup carries; none in one of an earlier version.</summary>
    internal static IReadOnlyList<string> In(Database backup) => Are(backup) ? backup.List("SELECT path FROM shop_files ORDER BY path", row => row.GetString(0)) : [];

    /// <summary>True when each is as it was put in, and has its place in a shop folder.</summary>
    internal static bool AreSound(Database backup)
    {
        try
        {
            return In(backup).All(path => HasPlace(path) && backup.List("SELECT bytes, sha256 FROM shop_files WHERE path = $1", row => Fits((byte[])row.GetValue(0), (byte[])row.GetValue(1)), path) is [true]);
        }
        catch (Exception fault) when (fault is SqliteException or InvalidCastException)
        {
            return false;
        }
    }

    /// <summary>Takes them out of the copy that will be the ledger.</summary>
    internal static void Drop(Database copy)
    {
        if (Are(copy))
        {
            copy.Execute("PRAGMA journal_mode = MEMORY");
            copy.Execute("DROP TABLE shop_files");
            copy.Execute("VACUUM");
        }
    }

    /// <summary>Brings those into a shop folder that are not there. What stands there stays as it is.</summary>
    /// <param name="backup">The backup.</param>
    /// <param name="folder">The shop folder.</param>
    /// <param name="write">False only to look what would be done.</param>
    internal static (IReadOnlyList<string> Brought, IReadOnlyList<string> Stayed) Bring(Database backup, ShopFolder folder, bool write)
    {
        var (brought, stayed) = (new List<string>(), new List<string>());
        foreach (var path in In(backup))
        {
            var place = folder.Full(path);
            if (FileLook.At(place) is not null)
            {
                if (!IsSame(backup, path, place))
                {
                    stayed.Add(path);
                }

                continue;
            }

            if (write)
            {
                Directory.CreateDirectory(Path.GetDirectoryName(place)!);
                DurableFile.Replace(place, Value(backup, "bytes", path));
            }

            brought.Add(path);
        }

        return (brought, stayed);
    }

    private static bool IsSame(Database backup, string path, string place) =>
        DurableFile.Hash(place).AsSpan().SequenceEqual(Value(backup, "sha256", path));

    private static bool Are(Database backup) => backup.Number("SELECT count(*) FROM sqlite_schema WHERE type = 'table' AND name = 'shop_files'") == 1;

    private static bool Fits(byte[] bytes, byte[] hash) => Sha256.Of(bytes).AsSpan().SequenceEqual(hash);

    private static void Insert(Database backup, string path, byte[] bytes, byte[] hash) => backup.Execute("INSERT INTO shop_files VALUES ($1, $2, $3)", path, bytes, hash);

    private static byte[] Value(Database backup, string column, string path) => backup.List($"SELECT {column} FROM shop_files WHERE path = $1", row => (byte[])row.GetValue(0), path)[0];

    private static IEnumerable<string> Own(ShopFolder folder)
    {
        string[] alone = [folder.Settings, folder.Calibrations];
        var rooms = Rooms.Select(folder.Full).Where(Directory.Exists).SelectMany(room => Directory.EnumerateFiles(room, "*.json").Order(StringComparer.Ordinal));
        return alone.Where(File.Exists).Concat(rooms).Select(folder.Shortened).Where(HasPlace);
    }

    private static bool IsPrinted(ShopFolder folder, string path) =>
        path.StartsWith(Labels, StringComparison.Ordinal) && HasPlace(path) && new FileInfo(folder.Full(path)) is { Exists: true, Length: <= MostPrinted };

    /// <summary>The bytes of a file that is as it was written; null for another, and for one that cannot be read.</summary>
    private static byte[]? ReadIfWhole(string place, byte[] written)
    {
        try
        {
            var bytes = Read(place);
            return Fits(bytes, written) ? bytes : null;
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return null;
        }
    }

    private static byte[] Read(string place)
    {
        using var stream = InputFile.Open(place);
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }

    /// <summary>A backup may come from anywhere: only paths that a backup of ours can hold are ever written.</summary>
    private static bool HasPlace(string path) => Places().IsMatch(path) && !path.Contains("..", StringComparison.Ordinal);

    [GeneratedRegex(@"^(?:shop\.json|calibration\.json|(?:catalog|layouts/sheets|layouts/labels)/[^/\\:.\p{C}][^/\\:\p{C}]*\.json|labels/[^/\\:.\p{C}][^/\\:\p{C}]*\.(?:pdf|png|svg))\z", RegexOptions.CultureInvariant)]
    private static partial Regex Places();
}
