namespace JarLabel.Store.Files;

/// <summary>What on the disk belongs to a shop and is no place for an answer: its ledger with all that stands beside it, its settings, and
/// everything in its rooms but the labels. It is known under every name: through linked folders, linked files and, where the system
/// tells, hard links and folders that are mounted twice.</summary>
internal sealed class ShopGround(ShopFolder shop)
{
    private readonly string[] files = [shop.Ledger, shop.Ledger + "-wal", shop.Ledger + "-shm", shop.Ledger + "-journal", shop.Settings, shop.Calibrations, shop.Devices, shop.Certificate, shop.Lock, shop.Numbers, shop.RestoreLock];
    private readonly string[] rooms = [shop.Catalog, shop.Layouts, shop.Staging];

    /// <summary>True when a file there would be the shop's own, or lie among its own.</summary>
    /// <param name="real">The full path without a link in it.</param>
    internal bool Holds(string real) => HasOwnName(real) || IsInRoom(real) || IsOwnUnderAnotherName(real);

    /// <summary>True when the place lies in one of the rooms, or is one.</summary>
    internal bool IsInRoom(string real)
    {
        var looks = Array.ConvertAll(rooms, FileLook.At);
        var paths = Array.ConvertAll(rooms, LinkPath.Of);
        for (var at = real; at is not null; at = Path.GetDirectoryName(at))
        {
            var look = FileLook.At(at);
            if (paths.Any(path => SameName(path, at)) || looks.Any(room => room is not null && room.IsSame(look)))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>True when the place is one of the shop's files by its name, whether the file is there yet or not.</summary>
    private bool HasOwnName(string real)
    {
        var ledger = LinkPath.Of(shop.Ledger);
        return files.Any(file => IsNamed(real, file)) || BeginsWith(real, shop.Ledger) || BeginsWith(real, ledger) || IsSetAside(real) || files.Any(file => SameName(LinkPath.Of(file), real));
    }

    /// <summary>What is put beside the ledger keeps its name and adds to it.</summary>
    private static bool BeginsWith(string real, string ledger) =>
        Path.GetFileName(real).StartsWith(Path.GetFileName(ledger), StringComparison.OrdinalIgnoreCase) && SameFolder(real, ledger);

    /// <summary>What <c>restore</c> kept of an earlier ledger: <c>ledger-2026-03-09-143000.db</c>, with its log.</summary>
    private bool IsSetAside(string real) => Path.GetFileName(real) is var name && name.StartsWith("ledger-", StringComparison.OrdinalIgnoreCase)
        && name.Contains(".db", StringComparison.OrdinalIgnoreCase) && (SameFolder(real, shop.Ledger) || SameFolder(real, shop.LedgerFile));

    private static bool IsNamed(string real, string file) => SameName(Path.GetFileName(real), Path.GetFileName(file)) && SameFolder(real, file);

    private static bool SameFolder(string one, string other)
    {
        var (first, second) = (Path.GetDirectoryName(one)!, Path.GetDirectoryName(other)!);
        return SameName(first, LinkPath.Of(second)) || FileLook.At(first)?.IsSame(FileLook.At(second)) == true;
    }

    private bool IsOwnUnderAnotherName(string real)
    {
        if (FileLook.At(real) is not { Kind: FileKind.File } look)
        {
            return false;
        }

        var all = look.Names > 1 ? files.Concat(rooms.Where(Directory.Exists).SelectMany(Everything)) : files;
        return all.Any(file => look.IsSame(FileLook.At(file)));
    }

    private static IEnumerable<string> Everything(string room) =>
        Directory.EnumerateFiles(room, "*", new EnumerationOptions { RecurseSubdirectories = true, IgnoreInaccessible = true, AttributesToSkip = 0 });

    /// <summary>Some disks do not tell small letters from capital ones; no shop needs two files that differ in nothing else.</summary>
    private static bool SameName(string one, string other) => one.Equals(other, StringComparison.OrdinalIgnoreCase);
}
