using System.Diagnostics;

namespace JarLabel.Store.Files;

/// <summary>Opens a file that another program may keep for a moment.</summary>
internal static class PatientFile
{
    private const int WouldBlock = 11;
    private const int WouldBlockOnMac = 35;
    private const int SharingViolation = unchecked((int)0x80070020);

    /// <summary>The open file, or null when somebody keeps it for the whole time; throws whatever else the disk throws.</summary>
    internal static FileStream? Open(string path, FileMode mode, FileAccess access, FileShare share, TimeSpan limit)
    {
        for (var since = Stopwatch.GetTimestamp(); ; Thread.Sleep(5))
        {
            try
            {
                return new FileStream(path, mode, access, share, bufferSize: 0);
            }
            catch (IOException fault) when (fault.HResult is WouldBlock or WouldBlockOnMac or SharingViolation)
            {
                if (Stopwatch.GetElapsedTime(since) > limit)
                {
                    return null;
                }
            }
        }
    }
}
