using System.Runtime.InteropServices;

namespace JarLabel.Cli;

/// <summary>The memory of the libraries that draw and store. They ask for a quarter of a megabyte and give it back over and over; by
/// itself the C library then gives each piece back to the system, and every piece starts with pages that have to be fetched again.</summary>
internal static partial class NativeHeap
{
    private const int TrimThreshold = -1, MmapThreshold = -3;
    private const int Megabyte = 1 << 20;

    /// <summary>Keeps what was given back, up to a limit. Only GNU's C library knows how.</summary>
    internal static void Keep()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        try
        {
            _ = SetOption(MmapThreshold, 4 * Megabyte);
            _ = SetOption(TrimThreshold, 32 * Megabyte);
        }
        catch (EntryPointNotFoundException)
        {
            return;
        }
    }

    [LibraryImport("libc", EntryPoint = "mallopt")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int SetOption(int option, int value);
}
