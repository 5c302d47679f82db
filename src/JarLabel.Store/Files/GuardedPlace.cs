namespace JarLabel.Store.Files;

/// <summary>A place that the guard let through, as it looked then. A finished part is moved in only when it still looks so.</summary>
public sealed partial class GuardedPlace
{
    private const int FromHere = -100, AlreadyThere = 17;
    private const uint NothingThere = 1;

    private GuardedPlace(string path, string real, FileLook? seen) => (Path, Real, Seen) = (path, real, seen);

    /// <summary>The full path as it was named.</summary>
    public string Path { get; }

    /// <summary>The same without a link in it.</summary>
    internal string Real { get; }

    /// <summary>What was there; null for nothing.</summary>
    internal FileLook? Seen { get; }

    /// <summary>Where the bytes go: through the folders as they were named, so that the ledger knows them under that name, but past a link
    /// of the file's own name, which stays a link.</summary>
    internal string Target => new FileInfo(Path).LinkTarget is null ? Path : Real;

    internal static GuardedPlace At(string path)
    {
        var full = System.IO.Path.GetFullPath(path);
        var real = LinkPath.Of(full);
        return new GuardedPlace(full, real, FileLook.At(real));
    }

    /// <summary>Moves a finished part in. Null also when somebody else has already moved it.</summary>
    /// <param name="part">The part's full path, on the same disk.</param>
    internal Problem? Receive(string part)
    {
        if (!File.Exists(part))
        {
            return null;
        }

        var now = At(Path);
        if (now.Real != Real || now.Seen != Seen || !TryMove(part))
        {
            return File.Exists(part) ? FileProblems.ChangedMeanwhile(Path) : null;
        }

        FolderSync.Flush(System.IO.Path.GetDirectoryName(Real)!);
        return null;
    }

    /// <summary>Where nothing was, nothing is written over, however late it came.</summary>
    private bool TryMove(string part)
    {
        if (Seen is null && OperatingSystem.IsLinux() && MovedToNothing(part) is { } moved)
        {
            return moved;
        }

        try
        {
            File.Move(part, Real, overwrite: Seen is not null);
            return true;
        }
        catch (FileNotFoundException)
        {
            return true;
        }
    }

    /// <summary>The move in one step that fails when something is there; null where the disk or the system has no such step.</summary>
    private bool? MovedToNothing(string part)
    {
        try
        {
            return Move(FromHere, part, FromHere, Real, NothingThere) == 0 ? true
                : Marshal.GetLastPInvokeError() == AlreadyThere ? false
                : null;
        }
        catch (EntryPointNotFoundException)
        {
            return null;
        }
    }

    [LibraryImport("libc", EntryPoint = "renameat2", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Move(int fromFolder, string from, int toFolder, string to, uint flags);
}
