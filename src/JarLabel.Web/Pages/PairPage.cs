using System.Text.RegularExpressions;

namespace JarLabel.Web.Pages;

/// <summary>Where a telephone or tablet gives the code from the server's screen.</summary>
internal static partial class PairPage
{
    private const int LongestName = 40, LongestCode = 16;

    /// <summary>Reads what a device is called.</summary>
    internal static Func<string, string, Result<string>> Name { get; } = ValueReader.TextUpTo(LongestName);

    internal static string Of(string token, string? code, string? back, string? fingerprint) => Frame.Page(
        "Pair this device",
        Html.Of(
            $"""
            <h1>Pair this device</h1>
            <p>The code stands on the screen of the computer that serves these pages. With it this device may record.</p>
            {(fingerprint is null ? default : Html.Of($"""<p><b>First, is it this shop?</b> The shop made its own certificate, and your browser warned of it. Open what the browser shows of the certificate, and compare its SHA-256 fingerprint with the one on the server's screen. Where they differ, somebody stands between: do not pair.</p><p class="print">{fingerprint}</p>"""))}
            <form method="post" action="/pair" autocomplete="off">{FormPage.Hidden("token", token)}{FormPage.Hidden("to", Back(back))}
            <label for="f-code">Pairing code</label><input id="f-code" name="code" inputmode="numeric" value="{Digits(code)}" aria-describedby="h-code"><span class="hint" id="h-code">the digits on that screen, such as 0417 2935</span>
            <label for="f-name">What this device is called</label><input id="f-name" name="name" aria-describedby="h-name"><span class="hint" id="h-name">bench tablet</span>
            <button>Pair</button></form>
            """),
        Frame.Served);

    /// <summary>The page's address, with the way back.</summary>
    internal static string Address(string back) => Ours().IsMatch(back) ? $"/pair?to={back}" : "/pair";

    /// <summary>The way back: one of our own pages, or the list of jars.</summary>
    internal static string Back(string? path) => path is not null && Ours().IsMatch(path) ? path : "/";

    private static string Digits(string? code) => code is { Length: <= LongestCode } ? string.Concat(code.Where(char.IsAsciiDigit)) : "";

    [GeneratedRegex("^/(?:mix|can|scan|[Jj]/[0-9.-]{1,20}(?:/[a-z]{1,12})?)$", RegexOptions.CultureInvariant)]
    private static partial Regex Ours();
}
