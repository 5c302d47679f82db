using System.Text.RegularExpressions;

namespace JarLabel.Web.Pages;

/// <summary>The one style sheet and the one script, both embedded. The style stands inside the page, so that a page is one request, and is
/// let in by its hash.</summary>
internal static partial class PageAssets
{
    /// <summary>The style sheet without comments and indentation.</summary>
    internal static string Style { get; } = Blank().Replace(Comment().Replace(Read("look.css"), ""), "").Trim();

    /// <summary>How a content security policy names the style.</summary>
    internal static string StyleHash { get; } = $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(Style)))}'";

    /// <summary>The script of the bench forms.</summary>
    internal static byte[] Script { get; } = Encoding.UTF8.GetBytes(Read("bench.js"));

    private static string Read(string name) => Encoding.UTF8.GetString(EmbeddedFile.Read(typeof(PageAssets).Assembly, name));

    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.Singleline)]
    private static partial Regex Comment();

    [GeneratedRegex(@"\r|(?<=\n)\s+", RegexOptions.None)]
    private static partial Regex Blank();
}
