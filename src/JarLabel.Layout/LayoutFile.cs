namespace JarLabel.Layout;

/// <summary>One file of layouts, ours or a shop's own.</summary>
/// <param name="Path">Its name as the user knows it, such as <c>layouts/sheets/roll-57x32.json</c>; its folder's name, <c>sheets</c> or
/// <c>labels</c>, says what it is.</param>
/// <param name="Read">Its bytes.</param>
public sealed record LayoutFile(string Path, Func<byte[]> Read)
{
    /// <summary>The file's name without folder and ending.</summary>
    public string Id => System.IO.Path.GetFileNameWithoutExtension(Path);

    /// <summary>True for stock, false for a design.</summary>
    public bool IsSheet => Folder == "sheets";

    private string Folder => System.IO.Path.GetFileName(System.IO.Path.GetDirectoryName(Path) ?? "");
}
