namespace JarLabel.Store.Files;

/// <summary>Makes a folder's list of names survive a power cut: on Unix a new or renamed file is only safe once its folder was
/// flushed too, which .NET has no call for. Windows keeps names in its own journal.</summary>
internal static partial class FolderSync
{
    internal static void Flush(string folder)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        var handle = OpenFolder(folder, 0);
        if (handle >= 0)
        {
            _ = SyncHandle(handle);
            _ = CloseHandle(handle);
        }
    }

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int OpenFolder(string path, int readOnly);

    [LibraryImport("libc", EntryPoint = "fsync")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int SyncHandle(int handle);

    [LibraryImport("libc", EntryPoint = "close")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int CloseHandle(int handle);
}
