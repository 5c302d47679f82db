namespace JarLabel.Tests;

/// <summary>The folder of the checkout that the tests run in.</summary>
internal static class Checkout
{
    internal static string Root { get; } = Up(AppContext.BaseDirectory);

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
