using System.Net.Security;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace JarLabel.Tests.Printing;

/// <summary>Printers whose certificate nobody signed, as nearly all are, and one that knows no secure connection.</summary>
public sealed class PrinterCertificateTests : IDisposable
{
    private readonly TcpListener listener = new(IPAddress.Loopback, 0);
    private readonly X509Certificate2 certificate = SignedByItself();
    private int handshakes;

    public PrinterCertificateTests() => listener.Start();

    public void Dispose()
    {
        listener.Dispose();
        certificate.Dispose();
    }

    [Fact]
    public async Task A_certificate_that_nobody_signed_is_refused_with_the_fingerprint_that_would_be_trusted()
    {
        var problem = await Asked("", Secure);
        Assert.Equal("JL510", problem.Code);
        Assert.Contains($"add #sha256:{Fingerprint} to its address", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Another_certificate_than_the_one_that_was_written_down_is_refused()
    {
        var problem = await Asked($"#sha256:{new string('a', 64)}", Secure);
        Assert.Equal("JL510", problem.Code);
        Assert.Contains("another one than before", problem.Message, StringComparison.Ordinal);
        Assert.Contains(Fingerprint, problem.Message, StringComparison.Ordinal);
    }

    /// <summary>It then hangs up, which is told as that.</summary>
    [Fact]
    public async Task The_certificate_that_was_written_down_is_trusted()
    {
        Assert.Equal("JL506", (await Asked($"#sha256:{Fingerprint}", Secure)).Code);
        Assert.Equal(1, handshakes);
    }

    [Fact]
    public async Task A_printer_that_knows_no_secure_connection_is_told_as_that()
    {
        var problem = await Asked("", async client => await client.GetStream().WriteAsync("HTTP/1.1 400 Bad Request\r\n\r\n"u8.ToArray()));
        Assert.Equal("JL510", problem.Code);
        Assert.Contains("It may know ipp:// only", problem.Message, StringComparison.Ordinal);
    }

    private string Fingerprint => Convert.ToHexStringLower(SHA256.HashData(certificate.RawData));

    /// <summary>What is told of a printer that answers one connection so and hangs up.</summary>
    private async Task<Problem> Asked(string pin, Func<TcpClient, Task> answer)
    {
        var answering = Task.Run(async () =>
        {
            using var client = await listener.AcceptTcpClientAsync(TestContext.Current.CancellationToken);
            await answer(client);
        });
        var address = PrinterAddress.Read($"ipps://127.0.0.1:{((IPEndPoint)listener.LocalEndpoint).Port}/ipp/print{pin}", "print-to").Require();
        using var printer = new Printer(address, PrintPatience.Usual, "bench");
        var told = Assert.Single((await printer.Facts(TestContext.Current.CancellationToken)).Problems);
        await answering;
        return told;
    }

    private async Task Secure(TcpClient client)
    {
        try
        {
            await using var line = new SslStream(client.GetStream());
            await line.AuthenticateAsServerAsync(certificate);
            handshakes += await line.ReadAsync(new byte[1024]) > 0 ? 1 : 0;
        }
        catch (Exception fault) when (fault is IOException or System.Security.Authentication.AuthenticationException)
        {
            // The client let go of a certificate that it does not trust.
        }
    }

    private static X509Certificate2 SignedByItself()
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest("CN=bench", key, HashAlgorithmName.SHA256);
        using var made = request.CreateSelfSigned(DateTimeOffset.UtcNow.AddDays(-1), DateTimeOffset.UtcNow.AddDays(1));
        return X509CertificateLoader.LoadPkcs12(made.Export(X509ContentType.Pkcs12), null);
    }
}
