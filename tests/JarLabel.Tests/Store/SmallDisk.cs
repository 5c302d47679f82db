namespace JarLabel.Tests.Store;

/// <summary>A disk of a given size, in memory; needs Linux and root.</summary>
internal sealed class SmallDisk : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("jarlabel-disk-").FullName;

    public SmallDisk(string size)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() && Environment.UserName == "root", "Only root can mount a small disk.");
        var (code, said) = OutsideProgram.Run("mount", "-t", "tmpfs", "-o", "size=" + size, "tmpfs", folder);
        Assert.SkipUnless(code == 0, "A small disk cannot be mounted here: " + said);
    }

    public string Path => folder;

    public void Remount(string option) => Assert.Equal((0, ""), OutsideProgram.Run("mount", "-o", "remount," + option, folder));

    public void Dispose()
    {
        OutsideProgram.Run("umount", folder);
        Directory.Delete(folder);
    }
}
