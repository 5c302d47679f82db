namespace JarLabel.Tests.Web;

/// <summary>What came back.</summary>
internal sealed partial record Page(int Status, string Text, string? Location, IReadOnlyDictionary<string, string> Headers)
{
    /// <summary>What a reader sees of it: no tags, no style, one blank between words.</summary>
    internal string Seen => Blanks().Replace(WebUtility.HtmlDecode(Tags().Replace(Text, " ")), " ");

    [GeneratedRegex("<style>.*?</style>|<[^>]*>", RegexOptions.Singleline)]
    private static partial Regex Tags();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
