namespace JarLabel.Web.Guards;

/// <summary>Whether a form was sent from a page of this server. What the browser says in Sec-Fetch-Site and Origin must both fit; a request
/// that says neither is not taken.</summary>
internal static class SameOrigin
{
    /// <summary>True for what a browser says that a page of another server asked for.</summary>
    internal static bool IsForeign(HttpRequest request) => request.Headers["Sec-Fetch-Site"] == "cross-site";

    internal static bool Holds(HttpRequest request)
    {
        var site = request.Headers["Sec-Fetch-Site"].ToString();
        var origin = request.Headers.Origin.ToString();
        return (site.Length > 0 || origin.Length > 0)
            && (site.Length == 0 || site == "same-origin")
            && (origin.Length == 0 || string.Equals(origin, $"{request.Scheme}://{request.Host.Value}", StringComparison.OrdinalIgnoreCase));
    }
}
