namespace JarLabel.Web.Guards;

/// <summary>The mark in each form that shows it came from a page of this server, opened by the same device.</summary>
internal sealed class FormTokens
{
    private readonly byte[] key = RandomNumberGenerator.GetBytes(32);

    internal string Of(string device) => Convert.ToHexStringLower(HMACSHA256.HashData(key, Encoding.UTF8.GetBytes(device)));

    internal bool Fits(string? token, string device) =>
        CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(token ?? ""), Encoding.UTF8.GetBytes(Of(device)));
}
