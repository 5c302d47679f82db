using Microsoft.AspNetCore.Http;

namespace JarLabel.Web.Guards;

/// <summary>Knows who comes. On this machine alone everybody who comes is at home; on a network only the devices that were paired.</summary>
internal sealed class Doorkeeper(bool lan, bool open, Devices devices)
{
    /// <summary>The cookie that holds a device's token.</summary>
    private const string Cookie = "jarlabel";

    private const int CookieDays = 400;

    private static readonly Visitor AtHome = new("here", true, true);

    internal Visitor Who(HttpRequest request) => !lan
        ? AtHome
        : devices.Holding(request.Cookies[Cookie]) is { } device
            ? new Visitor(device.Id, true, true) { Paired = device }
            : new Visitor("", open, false);

    /// <summary>The cookie for a new device. Lax, not Strict: a telephone's camera opens a jar's page from outside, and it must be known
    /// there; forms of other sites come without the cookie either way.</summary>
    internal static string Kept(string token) => $"{Cookie}={token}; Path=/; Max-Age={CookieDays * 24 * 60 * 60}; HttpOnly; SameSite=Lax";
}
