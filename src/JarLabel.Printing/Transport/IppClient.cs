using System.Net.Http.Headers;
using System.Net.Security;
using System.Net.Sockets;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace JarLabel.Printing.Transport;

/// <summary>Posts requests to one printer and reads its answers: bounded in time and in size, no redirects, no proxy, and never a second
/// try of its own, because a document sent twice is printed twice.</summary>
public sealed class IppClient : IDisposable
{
    /// <summary>The longest answer read. A printer's whole list of attributes is some tens of kilobytes.</summary>
    private const int LongestAnswer = 1 << 20;

    private const string MediaType = "application/ipp";
    private readonly PrinterAddress address;
    private readonly PrintPatience patience;
    private readonly HttpClient client;
    private string? shownCertificate;
    private int requests;

    /// <summary>A door to a printer.</summary>
    public IppClient(PrinterAddress address, PrintPatience patience)
    {
        this.address = address;
        this.patience = patience;
        client = new HttpClient(Handler()) { Timeout = Timeout.InfiniteTimeSpan };
    }

    /// <summary>The printer's address.</summary>
    public PrinterAddress Address => address;

    /// <summary>Asks once.</summary>
    /// <param name="operation">What.</param>
    /// <param name="groups">The groups, the operation's first; charset and language are set before them.</param>
    /// <param name="document">What follows; null for nothing.</param>
    /// <param name="stop">Ends the waiting.</param>
    public async Task<IppAnswer> Ask(IppOperation operation, IReadOnlyList<IppGroup> groups, byte[]? document = null, CancellationToken stop = default)
    {
        var id = ++requests;
        var head = IppWriter.Bytes(new IppMessage((ushort)operation, id, groups));
        using var body = new ByteArrayContent(document is null ? head : [.. head, .. document]);
        body.Headers.ContentType = new MediaTypeHeaderValue(MediaType);
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(stop);
        limit.CancelAfter(document is null ? patience.Answer : patience.Send);
        try
        {
            using var request = new HttpRequestMessage(HttpMethod.Post, address.Door) { Content = body };
            using var response = await client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, limit.Token).ConfigureAwait(false);
            return await Read(response, id, limit.Token).ConfigureAwait(false);
        }
        catch (OperationCanceledException)
        {
            return new IppAnswer(null, stop.IsCancellationRequested ? PrintingProblems.Stopped() : PrintingProblems.NoAnswer(address.Uri), true);
        }
        catch (Exception fault) when (fault is HttpRequestException or IOException or SocketException)
        {
            return Broken(fault);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => client.Dispose();

    private async Task<IppAnswer> Read(HttpResponseMessage response, int id, CancellationToken limit)
    {
        if (response.StatusCode != HttpStatusCode.OK)
        {
            return new IppAnswer(null, PrintingProblems.HttpStatus(address.Uri, (int)response.StatusCode), false);
        }

        if (response.Content.Headers.ContentType?.MediaType != MediaType)
        {
            return new IppAnswer(null, PrintingProblems.NotIpp(address.Uri), true);
        }

        if (await Whole(response, limit).ConfigureAwait(false) is not { } bytes)
        {
            return new IppAnswer(null, PrintingProblems.EndlessAnswer(address.Uri), true);
        }

        return IppReader.Read(bytes, out _) is { } message && message.RequestId == id
            ? new IppAnswer(message, null, true)
            : new IppAnswer(null, PrintingProblems.NotIpp(address.Uri), true);
    }

    private static async Task<byte[]?> Whole(HttpResponseMessage response, CancellationToken limit)
    {
        var stream = await response.Content.ReadAsStreamAsync(limit).ConfigureAwait(false);
        using var whole = new MemoryStream();
        var part = new byte[16384];
        for (int read; (read = await stream.ReadAsync(part, limit).ConfigureAwait(false)) > 0;)
        {
            whole.Write(part, 0, read);
            if (whole.Length > LongestAnswer)
            {
                return null;
            }
        }

        return whole.ToArray();
    }

    private IppAnswer Broken(Exception fault) => fault switch
    {
        HttpRequestException { HttpRequestError: HttpRequestError.NameResolutionError } => new(null, PrintingProblems.NoSuchHost(address.Uri, address.Door.Host), false),
        HttpRequestException { HttpRequestError: HttpRequestError.SecureConnectionError } => new(null, PrintingProblems.NotTrusted(address.Uri, shownCertificate), false),
        HttpRequestException { HttpRequestError: HttpRequestError.ConnectionError } => new(null, PrintingProblems.NotThere(address.Uri), false),
        _ => new(null, PrintingProblems.Dropped(address.Uri), true),
    };

    private SocketsHttpHandler Handler()
    {
        var handler = new SocketsHttpHandler
        {
            AllowAutoRedirect = false,
            UseProxy = false,
            UseCookies = false,
            ConnectTimeout = patience.Connect,
            MaxResponseHeadersLength = 32,
            PooledConnectionIdleTimeout = TimeSpan.FromSeconds(2),
        };
        handler.SslOptions.RemoteCertificateValidationCallback = (_, certificate, _, errors) => Trusted(certificate, errors);
        if (address.Socket is { } socket)
        {
            handler.ConnectCallback = (_, stop) => Local(socket, stop);
        }

        return handler;
    }

    /// <summary>Printers sign their certificates themselves; the one that the person has written down counts, and only that.</summary>
    private bool Trusted(X509Certificate? certificate, SslPolicyErrors errors)
    {
        shownCertificate = certificate is null ? null : Convert.ToHexStringLower(SHA256.HashData(certificate.GetRawCertData()));
        return address.Pin is { } pin ? pin == shownCertificate : errors == SslPolicyErrors.None;
    }

    private static async ValueTask<Stream> Local(string path, CancellationToken stop)
    {
        var socket = new Socket(AddressFamily.Unix, SocketType.Stream, ProtocolType.Unspecified);
        try
        {
            await socket.ConnectAsync(new UnixDomainSocketEndPoint(path), stop).ConfigureAwait(false);
            return new NetworkStream(socket, ownsSocket: true);
        }
        catch
        {
            socket.Dispose();
            throw;
        }
    }
}

/// <summary>What came of a request: an answer, or why there is none.</summary>
/// <param name="Message">The answer; null when none came.</param>
/// <param name="Fault">Why none came.</param>
/// <param name="MayHaveArrived">True when the printer may have got the request all the same.</param>
public sealed record IppAnswer(IppMessage? Message, Core.Problem? Fault, bool MayHaveArrived);

/// <summary>How long a printer is waited for.</summary>
/// <param name="Connect">For the first sign of life.</param>
/// <param name="Answer">For a whole answer.</param>
/// <param name="Send">For taking a document and answering.</param>
/// <param name="Stall">For a job on which nothing moves, such as while somebody fetches paper.</param>
/// <param name="Between">Between two questions after a job, at first; later up to eight times as long.</param>
public sealed record PrintPatience(TimeSpan Connect, TimeSpan Answer, TimeSpan Send, TimeSpan Stall, TimeSpan Between)
{
    /// <summary>For people at a bench.</summary>
    public static PrintPatience Usual { get; } = new(
        TimeSpan.FromSeconds(5), TimeSpan.FromSeconds(15), TimeSpan.FromMinutes(2), TimeSpan.FromMinutes(3), TimeSpan.FromMilliseconds(250));
}
