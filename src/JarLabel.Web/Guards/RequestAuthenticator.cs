namespace JarLabel.Web.Guards;

/// <summary>Knows who comes. On this machine alone everybody who comes is at home; on a network only the devices that were paired.</summary>
internal sealed class RequestAuthenticator(bool lan, bool open, Devices devices)
{
    /// <summary>The cookie that holds a device's token.</summary>
    private const string Cookie = "jarlabel";

    private const int CookieDays = 400;

    private static readonly Client AtHome = new("here", true, true);

    internal Client Who(HttpRequest request) => !lan
        ? AtHome
        : devices.Holding(request.Cookies[Cookie]) is { } device
            ? new Client(device.Id, true, true) { Paired = device }
            : new Client("", open, false);

    /// <summary>The cookie for a new device. Lax, not Strict: a telephone's camera opens a jar's page from outside, and it must be known
    /// there; forms of other sites come without the cookie either way.</summary>
    /// <param name="token">The device's token.</param>
    /// <param name="encrypted">True where pages are served encrypted: then it is never sent in the open.</param>
    internal static string Kept(string token, bool encrypted) => $"{Cookie}={token}; Path=/; Max-Age={CookieDays * 24 * 60 * 60}; HttpOnly; SameSite=Lax{(encrypted ? "; Secure" : "")}";
}

/// <summary>Who comes with a request.</summary>
/// <param name="Device">The paired device's id, <c>here</c> on this machine, empty for a stranger.</param>
/// <param name="MayRead">True when it may look.</param>
/// <param name="MayRecord">True when it may record.</param>
internal sealed record Client(string Device, bool MayRead, bool MayRecord)
{
    /// <summary>The paired device; null where none is needed, and for a stranger.</summary>
    internal Device? Paired { get; init; }
}
