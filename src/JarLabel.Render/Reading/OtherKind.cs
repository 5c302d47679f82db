using System.Text;

namespace JarLabel.Render.Reading;

/// <summary>Kinds of files that people have codes in and that are not read here, known by their first bytes.</summary>
internal static class OtherKind
{
    /// <summary>What it is, in a word or two; null for anything else.</summary>
    internal static string? Of(ReadOnlySpan<byte> head) =>
        head.StartsWith("%PDF"u8) ? "a PDF file"
        : head.StartsWith("II*\0"u8) || head.StartsWith("MM\0*"u8) ? "a TIFF or camera raw picture"
        : head.StartsWith("\0\0\0\x0cJXL "u8) ? "a JPEG XL picture"
        : head.Length >= 12 && head[4..8].SequenceEqual("ftyp"u8) ? Brand(Encoding.Latin1.GetString(head[8..12]))
        : null;

    // ISO/IEC 23008-12 for pictures (from memory); what else begins so is a film.
    private static string Brand(string brand) => brand switch
    {
        "avif" or "avis" => "an AVIF picture",
        "heic" or "heix" or "heim" or "heis" or "hevc" or "hevx" or "mif1" or "msf1" => "a HEIC picture, as phones store them",
        _ => "a film",
    };
}
