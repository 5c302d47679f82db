namespace JarLabel.Tests;

/// <summary>A folder for one test's files, gone when the test is over.</summary>
internal sealed class ScratchFolder : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("jarlabel-test-");

    public string this[string name] => Path.Combine(folder.FullName, name);

    public void Dispose() => folder.Delete(recursive: true);
}
