namespace JarLabel.Tests.Web;

/// <summary>What a shop has settled, changed from a telephone or tablet.</summary>
public sealed class SettledFromAfarTests : IDisposable
{
    private readonly WebShop shop = new(IPAddress.Loopback);

    public void Dispose() => shop.Dispose();

    /// <summary>While it records, no device can be revoked; what a shop has settled is changed under the same lock.</summary>
    [Theory]
    [InlineData("/shop/set", "setting", "units", "value", "metric")]
    [InlineData("/calibrate", "sheet", "letter-2x5-101.6x50.8", "dx", "1")]
    public async Task A_paired_device_changes_what_the_shop_has_settled(string form, string first, string named, string second, string to)
    {
        shop.Cookie = (await shop.Fill("/pair", ("code", shop.Code), ("name", "bench tablet"))).Headers["Set-Cookie"].Split(';')[0];
        var page = await shop.Fill(form, (first, named), (second, to), ("do", "record"));
        Assert.True(page.Status == 303, page.Seen);
        Assert.Contains("Recorded", (await shop.Get(page.Location!)).Seen, StringComparison.Ordinal);
    }
}
