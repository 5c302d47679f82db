namespace JarLabel.Printing.Transport;

/// <summary>Where a printer is asked: the address it knows itself by, and where its HTTP door is. A CUPS queue may stand behind a socket.</summary>
public sealed record PrinterAddress
{
    /// <summary>The port of IPP.</summary>
    public const int UsualPort = 631;

    /// <summary>Where a printer of today answers when its address names no path (PWG 5100.14).</summary>
    private const string UsualPath = "/ipp/print";

    private const string PinWord = "sha256:";

    private PrinterAddress(string uri, Uri door, string? pin, string? socket)
    {
        Uri = uri;
        Door = door;
        Pin = pin;
        Socket = socket;
    }

    /// <summary>The <c>printer-uri</c> of every request.</summary>
    public string Uri { get; }

    /// <summary>Where the requests are posted.</summary>
    public Uri Door { get; }

    /// <summary>SHA-256 of the only certificate to be trusted, in lower-case hex; null for those the system trusts.</summary>
    public string? Pin { get; }

    /// <summary>The local socket to go through; null for the network.</summary>
    public string? Socket { get; }

    /// <summary>Reads <c>ipp://</c>, <c>ipps://</c>, <c>http://</c> or <c>https://</c> with a host, perhaps <c>#sha256:...</c> of its certificate.</summary>
    public static Result<PrinterAddress> Read(string text, string where)
    {
        if (!System.Uri.TryCreate(text.Trim(), UriKind.Absolute, out var uri) || uri.Host.Length == 0 || uri.UserInfo.Length > 0
            || uri.Scheme is not ("ipp" or "ipps" or "http" or "https"))
        {
            return PrintingProblems.NotAnAddress(text, where);
        }

        var secure = uri.Scheme is "ipps" or "https";
        var port = uri.Port > 0 ? uri.Port : UsualPort;
        var path = uri.AbsolutePath.Length <= 1 && uri.Scheme is ("ipp" or "ipps") ? UsualPath : uri.AbsolutePath;
        var door = new UriBuilder(secure ? "https" : "http", uri.Host, port, path).Uri;
        var known = $"{(secure ? "ipps" : "ipp")}://{uri.Host}{(port == UsualPort ? "" : $":{port}")}{path}";
        return Fragment(uri, text, where).Then<PrinterAddress>(pin => new PrinterAddress(known, door, pin.Length == 0 ? null : pin, null));
    }

    /// <summary>The door of a print server on this machine, and a queue of it.</summary>
    /// <param name="host">Its host.</param>
    /// <param name="port">Its port.</param>
    /// <param name="socket">The socket to go through; null for the network.</param>
    /// <param name="path">The queue's path; <c>/</c> for the server itself.</param>
    public static PrinterAddress OfServer(string host, int port, string? socket, string path) =>
        new($"ipp://{host}{(port == UsualPort ? "" : $":{port}")}{path}", new UriBuilder("http", host, port, path).Uri, null, socket);

    private static Result<string> Fragment(Uri uri, string text, string where)
    {
        var fragment = uri.Fragment.TrimStart('#').ToLowerInvariant();
        if (fragment.Length == 0)
        {
            return "";
        }

        var pin = fragment.StartsWith(PinWord, StringComparison.Ordinal) ? fragment[PinWord.Length..] : "";
        return pin.Length == 64 && pin.All(char.IsAsciiHexDigit) ? pin : PrintingProblems.NotAnAddress(text, where);
    }
}
