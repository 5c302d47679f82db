namespace JarLabel.Store.Files;

/// <summary>The one guard of every file that is written. Links are followed first. Then a file of the shop's own is refused, and a pipe, a
/// device and a folder; these always. A file that is there already is written over when it is empty, when it shows that this program
/// wrote it as the same kind of file, or when the ledger knows it; any other only when that was asked for.</summary>
public sealed class FileGuard(ShopFolder shop)
{
    private readonly ShopGround ground = new(shop);

    /// <summary>Looks at a place and says whether it may be written to.</summary>
    /// <param name="path">The place.</param>
    /// <param name="kind">What is to be written.</param>
    /// <param name="force">True to write over somebody else's file.</param>
    /// <param name="recorded">The SHA-256 that the ledger has of the file last written to a full path; null where it knows none.</param>
    public Result<GuardedPlace> Look(string path, OwnKind kind, bool force, Func<string, byte[]?>? recorded = null)
    {
        try
        {
            var place = GuardedPlace.At(path);
            return Refusal(place) is { } refused ? refused
                : force || MayReplace(place, kind, recorded) ? place
                : FileProblems.Foreign(place.Path);
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return StoreProblems.FileNotWritten(path, fault.Message);
        }
    }

    /// <summary>The same for contents that are at hand.</summary>
    /// <param name="path">The place.</param>
    /// <param name="bytes">What is to be written.</param>
    /// <param name="force">True to write over somebody else's file.</param>
    public Result<GuardedPlace> Look(string path, byte[] bytes, bool force) => Look(path, OwnMark.Of(bytes), force);

    /// <summary>Says whether a folder may be filled: not one of the shop's own rooms, nor one in them.</summary>
    public Result<string> LookAtFolder(string path)
    {
        try
        {
            var full = Path.GetFullPath(path);
            return ground.IsInRoom(LinkPath.Of(full)) ? FileProblems.OfTheShop(full) : full;
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return StoreProblems.FileNotWritten(path, fault.Message);
        }
    }

    /// <summary>What no wish overrides.</summary>
    private Problem? Refusal(GuardedPlace place) =>
        ground.Holds(place.Real) ? FileProblems.OfTheShop(place.Path)
        : place.Seen is { Kind: not FileKind.File and var kind } ? FileProblems.NotAFile(place.Path, kind)
        : null;

    private bool MayReplace(GuardedPlace place, OwnKind kind, Func<string, byte[]?>? recorded)
    {
        if (place.Seen is null or { Length: 0 })
        {
            return true;
        }

        var found = OwnMark.Of(place.Real);
        return found == OwnKind.None ? IsRecorded(place, recorded) : found == kind;
    }

    private bool IsRecorded(GuardedPlace place, Func<string, byte[]?>? recorded) =>
        (recorded?.Invoke(place.Path) ?? recorded?.Invoke(place.Real)) is { } hash && (IsLabel(place) || DurableFile.Hash(place.Real).AsSpan().SequenceEqual(hash));

    /// <summary>In the room of labels a file that the ledger knows is printed again though somebody damaged it.</summary>
    private bool IsLabel(GuardedPlace place) => Path.GetDirectoryName(place.Real) == LinkPath.Of(shop.Labels);
}
