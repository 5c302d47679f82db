using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using JarLabel.Web.Guards;

namespace JarLabel.Tests.Web;

/// <summary>The shop's own certificate: made once, kept from everybody else, and another where it serves no more.</summary>
public sealed class CertificateTests : IDisposable
{
    private static readonly string[] Names = ["localhost", "127.0.0.1", "::1", "192.168.1.20", "shop.example"];
    private static readonly DateTimeOffset Now = new(2026, 3, 9, 10, 0, 0, TimeSpan.Zero);

    private readonly ScratchFolder folder = new();
    private readonly ShopFolder shop;

    public CertificateTests() => shop = ShopFolder.At(folder["shop"]).Require();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void It_is_made_once_and_its_file_is_the_owners_alone()
    {
        var first = Print(Names, Now);
        Assert.Matches("^([0-9A-F]{2}:){31}[0-9A-F]{2}$", first);
        Assert.Equal(first, Print(Names, Now.AddDays(700)));
        Assert.Equal(first, Print(Names[..3], Now));
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(shop.Certificate));
        }
    }

    [Fact]
    public void Another_is_made_for_other_names_near_its_end_and_where_it_does_not_count_yet()
    {
        var first = Print(Names, Now);
        var second = Print([.. Names, "192.168.1.21"], Now);
        var third = Print([.. Names, "192.168.1.21", "jars.example"], Now);
        var fourth = Print(Names, Now.AddDays(800));
        var fifth = Print(Names, Now);
        Assert.Equal(5, new[] { first, second, third, fourth, fifth }.Distinct().Count());
    }

    /// <summary>By the rules of the system's own encryption, not of the code that made it.</summary>
    [Theory]
    [InlineData("shop.example", true)]
    [InlineData("192.168.1.20", true)]
    [InlineData("localhost", true)]
    [InlineData("192.168.1.21", false)]
    [InlineData("other.example", false)]
    public void Who_trusts_it_finds_it_good_for_its_names_and_for_serving_alone(string name, bool good)
    {
        using var certificate = ShopCertificate.Open(shop, Names, Now).Require();
        using var chain = new X509Chain();
        chain.ChainPolicy.TrustMode = X509ChainTrustMode.CustomRootTrust;
        chain.ChainPolicy.CustomTrustStore.Add(certificate);
        chain.ChainPolicy.RevocationMode = X509RevocationMode.NoCheck;
        chain.ChainPolicy.VerificationTime = Now.UtcDateTime.AddDays(800);
        chain.ChainPolicy.ApplicationPolicy.Add(new Oid("1.3.6.1.5.5.7.3.1"));
        Assert.True(chain.Build(certificate), string.Join(", ", chain.ChainStatus.Select(status => status.StatusInformation)));
        Assert.Equal(good, certificate.MatchesHostname(name));
        chain.Reset();
        chain.ChainPolicy.VerificationTime = Now.UtcDateTime.AddDays(826);
        Assert.False(chain.Build(certificate));
        using var key = certificate.GetECDsaPublicKey()!;
        Assert.Equal(256, key.KeySize);
    }

    [Theory]
    [InlineData("")]
    [InlineData("-----BEGIN CERTIFICATE-----\nAAAA\n-----END CERTIFICATE-----\n")]
    [InlineData("jar 142-5")]
    public void One_that_cannot_be_read_is_told_and_stays_as_it_is(string written)
    {
        Directory.CreateDirectory(shop.Path);
        File.WriteAllText(shop.Certificate, written);
        var problem = Assert.Single(ShopCertificate.Open(shop, Names, Now).Problems);
        Assert.Equal(("JL667", shop.Certificate), (problem.Code, problem.Where));
        Assert.Equal(written, File.ReadAllText(shop.Certificate));
    }

    [Fact]
    public void A_rehearsal_keeps_none()
    {
        using var certificate = ShopCertificate.Open(shop, Names, Now, keep: false).Require();
        Assert.True(certificate.HasPrivateKey);
        Assert.False(File.Exists(shop.Certificate));
    }

    [Fact]
    public async Task Served_encrypted_the_pairing_page_tells_the_fingerprint_and_the_cookie_never_goes_in_the_open()
    {
        using var served = new WebShop(IPAddress.Loopback, encrypted: true);
        Assert.Equal("https", served.Address.Scheme);
        var page = await served.Get("/pair");
        Assert.Contains(served.Fingerprint!, page.Seen, StringComparison.Ordinal);
        Assert.Equal(served.Fingerprint, string.Join(':', Convert.ToHexString(SHA256.HashData(served.Shown!.RawData)).Chunk(2).Select(pair => new string(pair))));
        Assert.False(page.Headers.ContainsKey("Strict-Transport-Security"));
        var cookie = (await served.Fill("/pair", ("code", served.Code), ("name", "bench tablet"))).Headers["Set-Cookie"];
        Assert.EndsWith("; Secure", cookie, StringComparison.Ordinal);
        served.Cookie = cookie.Split(';')[0];
        Assert.Equal(303, (await served.Fill("/J/1-9/note", ("text", "strained twice"), ("do", "record"))).Status);
        var before = served.Fingerprint;
        served.Restart();
        Assert.Equal(before, served.Fingerprint);
        Assert.Equal(200, (await served.Get("/J/1-9")).Status);
    }

    [Fact]
    public async Task Served_in_the_open_there_is_no_certificate()
    {
        using var served = new WebShop(IPAddress.Loopback);
        var page = await served.Get("/pair");
        Assert.DoesNotContain("fingerprint", page.Seen, StringComparison.Ordinal);
        Assert.DoesNotContain("Secure", (await served.Fill("/pair", ("code", served.Code), ("name", "x"))).Headers["Set-Cookie"], StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(served.Folder, "certificate.pem")));
    }

    private string Print(IReadOnlyList<string> names, DateTimeOffset now)
    {
        using var certificate = ShopCertificate.Open(shop, names, now).Require();
        return ShopCertificate.Fingerprint(certificate);
    }
}
