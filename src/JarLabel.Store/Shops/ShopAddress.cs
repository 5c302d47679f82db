using System.Buffers;

namespace JarLabel.Store.Shops;

/// <summary>The address of the shop's own pages, which the codes on its labels lead to: scheme, host and port, without a path.
/// The code is upper case and uses only the signs of a QR code's alphanumeric set; host names do not mind.</summary>
public sealed record ShopAddress
{
    private static readonly SearchValues<char> Allowed = SearchValues.Create("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789.-:/");

    private ShopAddress(string text) => Text = text;

    /// <summary>Such as <c>http://192.168.1.20:5080</c>: lower case, no slash at the end.</summary>
    public string Text { get; }

    /// <summary>Reads an address.</summary>
    public static Result<ShopAddress> Read(string text, string where)
    {
        return Uri.TryCreate(text.Trim(), UriKind.Absolute, out var address) && Fits(address) && !text.Trim().AsSpan().ContainsAnyExcept(Allowed)
            ? new ShopAddress(address.GetLeftPart(UriPartial.Authority).ToLowerInvariant())
            : ShopProblems.NotAnAddress(text, where);
    }

    /// <inheritdoc/>
    public override string ToString() => Text;

    private static bool Fits(Uri address) =>
        (address.Scheme == Uri.UriSchemeHttp || address.Scheme == Uri.UriSchemeHttps)
        && address.UserInfo.Length == 0 && address.PathAndQuery == "/" && address.Fragment.Length == 0;
}
