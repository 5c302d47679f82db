namespace JarLabel.Store.Files;

/// <summary>Files to read that somebody named. Only files of bytes are opened: a pipe may never begin and a device never end. What is
/// something else is told as what a disk refuses.</summary>
public static class InputFile
{
    private const int Buffer = 4096;

    /// <summary>Opens a file to read. A file that has just come into its place is held by its writer for a moment more, which is waited for.</summary>
    public static FileStream Open(string path)
    {
        Demand(path);
        return PatientFile.Open(path, FileMode.Open, FileAccess.Read, FileShare.Read, Patience.ToReach, Buffer) ?? throw new IOException("another program keeps it.");
    }

    /// <summary>Throws what a disk throws where something else than a file of bytes stands.</summary>
    public static void Demand(string path)
    {
        if (FileLook.At(path) is { Kind: not FileKind.File and var kind })
        {
            throw new IOException(FileProblems.OfKind(kind));
        }
    }
}
