using System.Diagnostics;

namespace JarLabel.Store.Files;

/// <summary>Opens a file that another program may keep for a moment.</summary>
internal static class PatientFile
{
    /// <summary>The open file, or null when somebody keeps it for the whole time; throws whatever else the disk throws.</summary>
    internal static FileStream? Open(string path, FileMode mode, FileAccess access, FileShare share, TimeSpan limit, int buffer = 0)
    {
        for (var since = Stopwatch.GetTimestamp(); ; Thread.Sleep(5))
        {
            try
            {
                return new FileStream(path, mode, access, share, buffer);
            }
            catch (IOException fault) when (FileLocks.IsHeld(fault))
            {
                if (Stopwatch.GetElapsedTime(since) > limit)
                {
                    return null;
                }
            }
        }
    }
}
