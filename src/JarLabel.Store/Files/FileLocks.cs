namespace JarLabel.Store.Files;

/// <summary>Locks on files that end with their holder, however it ends: the system lets go of them itself.</summary>
internal static class FileLocks
{
    /// <summary>How a file is opened so that whoever else opens it so is refused. On Windows the database must be able to open it too.</summary>
    internal static FileShare Alone => OperatingSystem.IsWindows() ? FileShare.ReadWrite | FileShare.Delete : FileShare.None;

    /// <summary>True when somebody else holds the file: EWOULDBLOCK of Linux and of macOS, ERROR_SHARING_VIOLATION of Windows.</summary>
    internal static bool IsHeld(IOException fault) => fault.HResult is 11 or 35 or unchecked((int)0x80070020);

    /// <summary>The file, held; null when somebody else holds it or nobody may open it.</summary>
    internal static FileStream? TryHold(string path)
    {
        try
        {
            return new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.None, bufferSize: 0);
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return null;
        }
    }
}
