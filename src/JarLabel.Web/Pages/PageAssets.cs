using System.Text.RegularExpressions;
using JarLabel.Render.Text;

namespace JarLabel.Web.Pages;

/// <summary>The one style sheet and the one script, both embedded. The style stands inside the page, so that a page is one request, and is
/// let in by its hash.</summary>
internal static partial class PageAssets
{
    /// <summary>The style sheet without comments and indentation.</summary>
    internal static string Style { get; } = Blank().Replace(Comment().Replace(Read("look.css"), ""), "").Trim();

    /// <summary>How a content security policy names the style.</summary>
    internal static string StyleHash { get; } = Hash(Style);

    /// <summary>Where pages that are served find the labels' typeface. A page that is kept as a file loads nothing, and is set in the telephone's own.</summary>
    internal static string Type { get; } = string.Concat(TypefaceFiles.Weights.Select(weight => $"@font-face{{font-family:Label;font-weight:{weight};font-display:swap;src:url(/type/{weight}.ttf)}}"));

    /// <summary>How a content security policy names it.</summary>
    internal static string TypeHash { get; } = Hash(Type);

    /// <summary>The file of a weight, by its name in an address; null for none of ours.</summary>
    internal static byte[]? Font(string file) => file.EndsWith(".ttf", StringComparison.Ordinal) ? TypefaceFiles.Read(file[..^4]) : null;

    /// <summary>The script of the bench forms.</summary>
    internal static byte[] Script { get; } = Encoding.UTF8.GetBytes(Read("bench.js"));

    private static string Hash(string text) => $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)))}'";

    private static string Read(string name) => Encoding.UTF8.GetString(EmbeddedFile.Read(typeof(PageAssets).Assembly, name));

    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.Singleline)]
    private static partial Regex Comment();

    [GeneratedRegex(@"\r|(?<=\n)\s+", RegexOptions.None)]
    private static partial Regex Blank();
}
