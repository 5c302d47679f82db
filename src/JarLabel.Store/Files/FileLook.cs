namespace JarLabel.Store.Files;

/// <summary>What a path leads to, through all links: of which kind it is, which one of all files, and how it was last written.</summary>
/// <param name="Kind">Its kind.</param>
/// <param name="Device">The disk it is on; 0 where the system does not tell.</param>
/// <param name="Number">Its number on that disk; 0 where the system does not tell.</param>
/// <param name="Names">How many names it has, hard links counted.</param>
/// <param name="Length">Its length.</param>
/// <param name="Written">When its bytes were last written.</param>
/// <param name="Changed">When anything of it last changed.</param>
internal sealed partial record FileLook(FileKind Kind, ulong Device, ulong Number, uint Names, long Length, long Written, long Changed)
{
    private const int FromHere = -100, BasicFacts = 0x7FF;
    private const int Mode = 28, KindBits = 0xF000, Buffer = 256;
    private static readonly Dictionary<int, FileKind> Kinds = new()
    {
        [0x4000] = FileKind.Folder,
        [0x1000] = FileKind.Pipe,
        [0x2000] = FileKind.Device,
        [0x6000] = FileKind.Device,
        [0xC000] = FileKind.Socket,
    };

    /// <summary>What is there; null when nothing is, or when nobody may look.</summary>
    internal static FileLook? At(string path)
    {
        try
        {
            return OperatingSystem.IsLinux() ? Asked(path) : Known(path);
        }
        catch (EntryPointNotFoundException)
        {
            return Known(path);
        }
    }

    /// <summary>True when both are one and the same, whatever their names; false where the system does not tell.</summary>
    internal bool IsSame(FileLook? other) => other is not null && Number != 0 && (Device, Number) == (other.Device, other.Number);

    private static FileLook? Asked(string path)
    {
        Span<byte> told = stackalloc byte[Buffer];
        if (Look(FromHere, path, 0, BasicFacts, told) != 0)
        {
            return null;
        }

        var kind = Kinds.GetValueOrDefault(MemoryMarshal.Read<ushort>(told[Mode..]) & KindBits, FileKind.File);
        return new FileLook(
            kind,
            MemoryMarshal.Read<ulong>(told[136..]),
            MemoryMarshal.Read<ulong>(told[32..]),
            MemoryMarshal.Read<uint>(told[16..]),
            MemoryMarshal.Read<long>(told[40..]),
            Moment(told[112..]),
            Moment(told[96..]));
    }

    /// <summary>Seconds and the part of one, in billionths.</summary>
    private static long Moment(ReadOnlySpan<byte> told) => unchecked((MemoryMarshal.Read<long>(told) * 1_000_000_000) + MemoryMarshal.Read<uint>(told[8..]));

    /// <summary>Where there is no such call: neither pipes nor other names of a file are known.</summary>
    private static FileLook? Known(string path)
    {
        FileInfo file = new(path);
        return file.Exists ? new FileLook(FileKind.File, 0, 0, 1, file.Length, file.LastWriteTimeUtc.Ticks, 0)
            : Directory.Exists(path) ? new FileLook(FileKind.Folder, 0, 0, 1, 0, 0, 0)
            : null;
    }

    [LibraryImport("libc", EntryPoint = "statx", StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Look(int from, string path, int flags, int wanted, Span<byte> told);
}
