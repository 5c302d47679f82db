namespace JarLabel.Web.Guards;

/// <summary>The headers that every answer carries: nothing from elsewhere is loaded or run, no one may frame it, nothing is kept.</summary>
internal static class SafeHeaders
{
    private static readonly string Policy =
        $"default-src 'none'; style-src {PageAssets.StyleHash} {PageAssets.TypeHash}; font-src 'self'; script-src 'self'; worker-src 'self'; manifest-src 'self'; connect-src 'self'; img-src 'self' data:; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    internal static void Put(IHeaderDictionary headers)
    {
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers.CacheControl = "no-store";

        // Not "no-referrer": with it browsers send "Origin: null" with our own forms, and the check of the origin would have nothing to check.
        // To other sites nothing is sent either way.
        headers["Referrer-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), microphone=(), geolocation=()";
    }
}
