namespace JarLabel.Cli;

/// <summary>The limit that a system may set to the size of a file (<c>ulimit -f</c>). Left to itself the system ends a program that writes
/// beyond it, without a word.</summary>
internal static partial class FileSizeLimit
{
    /// <summary>SIGXFSZ, of the same number on Linux and macOS.</summary>
    private const int Exceeded = 25;

    private const nint Ignore = 1;

    /// <summary>Makes such a write fail like any other that the disk refuses.</summary>
    internal static void MakeAnError()
    {
        if (OperatingSystem.IsLinux() || OperatingSystem.IsMacOS())
        {
            _ = Handle(Exceeded, Ignore);
        }
    }

    [LibraryImport("libc", EntryPoint = "signal")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial nint Handle(int signal, nint how);
}
