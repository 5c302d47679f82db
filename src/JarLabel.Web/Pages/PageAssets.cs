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

    /// <summary>What keeps the pages that were looked at last, where a browser runs it.</summary>
    internal static byte[] Keeper { get; } = Encoding.UTF8.GetBytes(Read("kept.js"));

    /// <summary>What stands on a telephone's home screen. It is the same for every shop, so that whoever asks learns nothing.</summary>
    internal static byte[] Manifest { get; } = Encoding.UTF8.GetBytes(
        """{"name":"JarLabel","short_name":"Jars","start_url":"/","display":"standalone","background_color":"#fbf8f1","theme_color":"#fbf8f1","icons":[{"src":"/icon-192.png","sizes":"192x192","type":"image/png"},{"src":"/icon-512.png","sizes":"512x512","type":"image/png"}]}""");

    /// <summary>An icon by its name in an address; null for none of ours.</summary>
    internal static byte[]? Icon(string file) => file is "icon-180.png" or "icon-192.png" or "icon-512.png" ? EmbeddedFile.Read(typeof(PageAssets).Assembly, file) : null;

    private static string Hash(string text) => $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)))}'";

    private static string Read(string name) => Encoding.UTF8.GetString(EmbeddedFile.Read(typeof(PageAssets).Assembly, name));

    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.Singleline)]
    private static partial Regex Comment();

    [GeneratedRegex(@"\r|(?<=\n)\s+", RegexOptions.None)]
    private static partial Regex Blank();
}
