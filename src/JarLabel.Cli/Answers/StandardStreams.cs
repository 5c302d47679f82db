namespace JarLabel.Cli.Answers;

/// <summary>Input, output and errors that were closed before the program began. Their numbers go to the next files that are opened, and an
/// answer must never be written into one of those.</summary>
internal static partial class StandardStreams
{
    private const int GetFlags = 1, CloseOnStart = 1;
    private const int ReadAndWrite = 2;
    private static readonly bool[] Closed = new bool[3];

    /// <summary>Looks which are open, and leads those that are not to nowhere.</summary>
    internal static void Prepare()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        for (var number = 0; number < Closed.Length; number++)
        {
            var flags = Control(number, GetFlags);

            // What a program was given stays open across its start; what it opened itself, as the runtime does, would not.
            Closed[number] = flags < 0 || (flags & CloseOnStart) != 0;
            if (flags < 0)
            {
                _ = Open("/dev/null", ReadAndWrite);
            }
        }
    }

    /// <summary>True when it was closed before the program began.</summary>
    internal static bool IsClosed(int number) => Closed[number];

    [LibraryImport("libc", EntryPoint = "fcntl")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Control(int number, int what);

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Open(string path, int how);
}
