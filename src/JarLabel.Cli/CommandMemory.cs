using System.Runtime;
using System.Runtime.CompilerServices;

namespace JarLabel.Cli;

/// <summary>The memory of one command. Left to themselves, its objects and the libraries that draw and store take it page by page, and
/// each page is a trip to the system; a label is done in less time than a thousand of them take.</summary>
internal static partial class CommandMemory
{
    private const int TrimThreshold = -1, MmapThreshold = -3;
    private const int PopulateWrite = 23;
    private const int Megabyte = 1 << 20;

    /// <summary>What is fetched, of objects and for the libraries: measured, a little less than a label needs of either.</summary>
    private const int ObjectBytes = 2 * Megabyte, LibraryBytes = 7 * Megabyte / 8;

    /// <summary>What a batch with its label makes of objects, and a little more: so much is made before garbage is collected for the first time, which takes longer than
    /// all the rest of a label. More costs every command.</summary>
    private const int ObjectsMade = 7 * Megabyte / 2;

    /// <summary>Fetches what a label needs at once, and keeps what the libraries give back, up to a limit. Only GNU's C library and
    /// Linux know how; where they do not, nothing changes.</summary>
    internal static void Prepare()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        try
        {
            _ = SetOption(MmapThreshold, 4 * Megabyte);
            _ = SetOption(TrimThreshold, 32 * Megabyte);
            FetchForLibraries();
            FetchForObjects();
        }
        catch (EntryPointNotFoundException)
        {
            return;
        }
    }

    private static unsafe void FetchForLibraries()
    {
        var block = NativeMemory.Alloc(LibraryBytes);
        Fetch((nint)block, LibraryBytes);
        NativeMemory.Free(block);
    }

    /// <summary>A region without collection has its memory reserved from the newest object on; it stays when the region is ended.</summary>
    private static void FetchForObjects()
    {
        if (!GC.TryStartNoGCRegion(ObjectsMade))
        {
            return;
        }

        var newest = new object();
        Fetch(Unsafe.As<object, nint>(ref newest), ObjectBytes);
        if (GCSettings.LatencyMode == GCLatencyMode.NoGCRegion)
        {
            GC.EndNoGCRegion();
        }
    }

    /// <summary>Only fetches pages that are the process's own to write, whatever the range; an older system refuses, without harm.</summary>
    private static void Fetch(nint from, int bytes)
    {
        var page = Environment.SystemPageSize;
        _ = Advise((from + page - 1) / page * page, bytes - page, PopulateWrite);
    }

    [LibraryImport("libc", EntryPoint = "mallopt")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int SetOption(int option, int value);

    [LibraryImport("libc", EntryPoint = "madvise")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Advise(nint address, nint bytes, int advice);
}
