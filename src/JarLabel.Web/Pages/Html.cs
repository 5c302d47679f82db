using System.Text.Encodings.Web;
using System.Text.Unicode;

namespace JarLabel.Web.Pages;

/// <summary>Makes HTML from interpolated text: what stands between braces is escaped, unless it is HTML already.</summary>
internal static class Html
{
    private static readonly HtmlEncoder Encoder = HtmlEncoder.Create(UnicodeRanges.All);

    /// <summary>Nothing.</summary>
    internal static Markup Nothing => default;

    internal static Markup Of(HtmlParts parts) => new(parts.ToString());

    /// <summary>HTML that was written by this project and holds nothing from outside.</summary>
    internal static Markup Own(string markup) => new(markup);

    internal static Markup All(IEnumerable<Markup> parts) => new(string.Concat(parts.Select(p => p.Text)));

    /// <summary>The markup when it is so, else nothing.</summary>
    internal static Markup If(bool so, Func<Markup> markup) => so ? markup() : default;

    internal static string Escape(string? text) => text is null ? "" : Encoder.Encode(text);
}
