using System.Security.Cryptography.X509Certificates;
using JarLabel.Store.Files;
using JarLabel.Store.Shops;

namespace JarLabel.Web.Guards;

/// <summary>The shop's own certificate, with which what is sent is encrypted. Nobody vouches for it: whoever comes compares its fingerprint with the one on
/// the server's screen, once. It is made once and kept in a file that only its owner can read, so that the fingerprint stays; another is made where the
/// server answers to names that it does not hold, and near its end.</summary>
internal static class ShopCertificate
{
    /// <summary>Some telephones take no certificate that holds for more than 825 days, whoever made it.</summary>
    private const int Days = 820, DaysBeforeEnd = 30;

    private const string ForServers = "1.3.6.1.5.5.7.3.1";

    /// <summary>The certificate kept in the shop folder, or a new one.</summary>
    /// <param name="folder">The shop.</param>
    /// <param name="names">The names the server answers to, as a browser writes them.</param>
    /// <param name="now">The moment.</param>
    /// <param name="keep">False to write nothing.</param>
    internal static Result<X509Certificate2> Open(ShopFolder folder, IReadOnlyList<string> names, DateTimeOffset now, bool keep = true)
    {
        try
        {
            if (File.Exists(folder.Certificate))
            {
                var kept = Read(folder.Certificate);
                if (Serves(kept, names, now))
                {
                    return Usable(kept);
                }

                kept.Dispose();
            }

            return keep ? ShopLock.Within<X509Certificate2>(folder, () => Usable(Kept(folder, Make(names, now)))) : Usable(Make(names, now));
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or CryptographicException or ArgumentException)
        {
            return WebProblems.CertificateUnreadable(folder.Certificate, fault.Message);
        }
    }

    /// <summary>Its fingerprint as it is compared: <c>3A:1F:...</c>.</summary>
    internal static string Fingerprint(X509Certificate2 certificate) =>
        string.Join(':', certificate.GetCertHashString(HashAlgorithmName.SHA256).Chunk(2).Select(pair => new string(pair)));

    private static X509Certificate2 Read(string file)
    {
        var text = Encoding.ASCII.GetString(DataFile.Read(file));
        return X509Certificate2.CreateFromPem(text, text);
    }

    private static bool Serves(X509Certificate2 kept, IReadOnlyList<string> names, DateTimeOffset now) =>
        kept.NotBefore.ToUniversalTime() <= now.UtcDateTime && kept.NotAfter.ToUniversalTime() >= now.UtcDateTime.AddDays(DaysBeforeEnd)
        && kept.Extensions.OfType<X509SubjectAlternativeNameExtension>().FirstOrDefault() is { } held
        && names.All(name => IPAddress.TryParse(name, out var address) ? held.EnumerateIPAddresses().Contains(address) : held.EnumerateDnsNames().Contains(name, StringComparer.OrdinalIgnoreCase));

    private static X509Certificate2 Make(IReadOnlyList<string> names, DateTimeOffset now)
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var wanted = new CertificateRequest("CN=JarLabel", key, HashAlgorithmName.SHA256);
        var held = new SubjectAlternativeNameBuilder();
        foreach (var name in names)
        {
            if (IPAddress.TryParse(name, out var address))
            {
                held.AddIpAddress(address);
            }
            else
            {
                held.AddDnsName(name);
            }
        }

        wanted.CertificateExtensions.Add(held.Build());
        wanted.CertificateExtensions.Add(new X509BasicConstraintsExtension(certificateAuthority: false, hasPathLengthConstraint: false, 0, critical: true));
        wanted.CertificateExtensions.Add(new X509KeyUsageExtension(X509KeyUsageFlags.DigitalSignature, critical: true));
        wanted.CertificateExtensions.Add(new X509EnhancedKeyUsageExtension([new Oid(ForServers)], critical: false));
        return wanted.CreateSelfSigned(now.AddDays(-1), now.AddDays(Days - 1));
    }

    private static X509Certificate2 Kept(ShopFolder folder, X509Certificate2 made)
    {
        using var key = made.GetECDsaPrivateKey()!;
        DurableFile.Replace(folder.Certificate, Encoding.ASCII.GetBytes($"{made.ExportCertificatePem()}\n{key.ExportPkcs8PrivateKeyPem()}\n"), ownerOnly: true);
        return made;
    }

    /// <summary>One whose key the system's own encryption can use: on Windows it must have come out of a store.</summary>
    private static X509Certificate2 Usable(X509Certificate2 certificate) =>
        OperatingSystem.IsWindows() ? X509CertificateLoader.LoadPkcs12(certificate.Export(X509ContentType.Pkcs12), null) : certificate;
}
