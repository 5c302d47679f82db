namespace JarLabel.Acceptance;

/// <summary>Where things are in the checkout.</summary>
internal static class Place
{
    /// <summary>The folder that holds the solution.</summary>
    internal static string Root { get; } = Up(AppContext.BaseDirectory);

    /// <summary>The program under test: the one named by JARLABEL_PROGRAM, such as the native one, or the one just built.</summary>
    internal static string Program { get; } = Environment.GetEnvironmentVariable("JARLABEL_PROGRAM") is { Length: > 0 } named
        ? named
        : Path.Combine(Root, "src", "JarLabel.Cli", "bin", Configuration, "net10.0", OperatingSystem.IsWindows() ? "jarlabel.exe" : "jarlabel");

    /// <summary>True for the native program, which starts so much faster that tests of whole processes can afford many more of them.</summary>
    internal static bool IsNative { get; } = !File.Exists(Path.ChangeExtension(Program, ".dll"));

    /// <summary>How it was built: Release or Debug.</summary>
    internal static string Configuration =>
        AppContext.BaseDirectory.Contains($"{Path.DirectorySeparatorChar}Release{Path.DirectorySeparatorChar}", StringComparison.Ordinal) ? "Release" : "Debug";

    private static string Up(string folder)
    {
        var at = new DirectoryInfo(folder);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "JarLabel.sln")))
        {
            at = at.Parent;
        }

        return at?.FullName ?? throw new InvalidOperationException("The tests do not run inside a checkout.");
    }
}
