using Microsoft.Win32.SafeHandles;

namespace JarLabel.Store.Files;

/// <summary>Files to read that somebody named. Only files of bytes are opened, and pipes that the program was handed open: any other pipe may never
/// begin, and a device never end. What is something else is told as what a disk refuses.</summary>
public static partial class InputFile
{
    private const int Buffer = 4096;
    private const int GetFlags = 1, StaysOpenOnStart = 0;

    /// <summary>Opens a file to read. A file that has just come into its place is held by its writer for a moment more, which is waited for.</summary>
    public static FileStream Open(string path)
    {
        if (FileLook.At(path)?.Kind == FileKind.Pipe && Handed(path) is { } number)
        {
            return new FileStream(new SafeFileHandle(number, ownsHandle: false), FileAccess.Read, Buffer);
        }

        Demand(path);
        return PatientFile.Open(path, FileMode.Open, FileAccess.Read, FileShare.Read, Patience.ToReach, Buffer) ?? throw new IOException("another program keeps it.");
    }

    /// <summary>The number of what was open when the program began, as in <c>cat list.csv | jarlabel mix --list /dev/stdin</c>: another program is at its
    /// other end already, and it is read as it is, since opening it once more may wait for nobody.</summary>
    private static nint? Handed(string path)
    {
        if (!OperatingSystem.IsLinux())
        {
            return null;
        }

        var folder = ((string[])["/dev/fd/", "/proc/self/fd/"]).FirstOrDefault(start => path.StartsWith(start, StringComparison.Ordinal));
        var text = path is "/dev/stdin" ? "0" : path[(folder?.Length ?? path.Length)..];
        return int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && Control(number, GetFlags) == StaysOpenOnStart ? number : null;
    }

    /// <summary>What a program was handed stays open across its start; what the runtime opened itself, such as a pipe of its own in the place of a
    /// closed input, would not.</summary>
    [LibraryImport("libc", EntryPoint = "fcntl")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Control(int number, int what);

    /// <summary>Throws what a disk throws where something else than a file of bytes stands.</summary>
    public static void Demand(string path)
    {
        if (FileLook.At(path) is { Kind: not FileKind.File and var kind })
        {
            throw new IOException(FileProblems.OfKind(kind));
        }
    }
}
