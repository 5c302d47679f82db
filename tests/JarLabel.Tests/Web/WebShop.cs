using System.Security.Cryptography.X509Certificates;
using JarLabel.Operations.Recording;
using JarLabel.Web;

namespace JarLabel.Tests.Web;

/// <summary>A shop with one jar, served on a free port, and a client that follows nothing by itself.</summary>
internal sealed partial class WebShop : IDisposable
{
    private readonly string root = Directory.CreateTempSubdirectory("jarlabel-test-").FullName;
    private readonly Func<RunningServer> start;
    private RunningServer server;
    private HttpClient client;

    internal WebShop(IPAddress? lan = null, bool open = false, bool empty = false, bool encrypted = false)
    {
        if (!empty)
        {
            Mix("350 mL", new LabelChoice());
        }

        start = () => Server.Start(new ServeRequest(0, lan, open, new WorkbenchFactory(Request, () => Fault is null ? Now : throw Fault), Said.Add) { Encrypted = encrypted }).Require();
        server = start();
        client = ClientOf(server);
    }

    internal DateTime Now { get; set; } = new(2026, 3, 9, 10, 0, 0);

    /// <summary>What goes wrong in the server, as only a fault of ours could; null for nothing.</summary>
    internal Exception? Fault { get; set; }

    internal List<string> Said { get; } = [];

    internal string Folder => Path.Combine(root, "shop");

    internal Uri Address => client.BaseAddress!;

    internal string Host => $"{Address.Host}:{Address.Port}";

    /// <summary>Where a form of this server comes from.</summary>
    internal string Origin => $"{Address.Scheme}://{Host}";

    /// <summary>The certificate that the server showed last; null where nothing is encrypted.</summary>
    internal X509Certificate2? Shown { get; private set; }

    internal string? Fingerprint => server.Fingerprint;

    internal string Code => server.PairingCode!;

    internal string? Cookie { get; set; }

    /// <summary>What the shop knows of a jar.</summary>
    internal JarHistory Jar(int number) => LedgerAccess.Jar(Bench(), JarNumber.From(number)).Require();

    internal int Jars() => LedgerAccess.Read<int>(Bench(), view => view.Shelf(new JarLabel.Store.Index.ShelfQuery(Take: 1000)).Count).Require();

    internal void Mix(string pour, LabelChoice? label = null, string? job = null, string? note = null, string grade = "garnet")
    {
        var bench = Bench();
        MixJar.Do(bench, new MixRequest(
            bench.Catalog.Grades.Named(grade).Require(),
            bench.Catalog.Solvents.Named("ethanol-95").Require(),
            new BatchRequest(CutText.Read("1.5", "").Require(), VolumeText.Read(pour, "").Require()),
            new Container(ContainerMaterial.Glass, Volume.FromMilliliters(1000)),
            Job: job,
            Note: note,
            Label: label)).Require();
    }

    /// <summary>A bag of garnet flakes and a bottle of alcohol, each the first of its kind.</summary>
    internal void Stock(string flakes, string alcohol)
    {
        var bench = Bench();
        SupplyOperations.Add(bench, SupplyRequest.Bag(bench.Catalog.Grades.Named("garnet").Require(), MassText.Read(flakes, "").Require(), new DateOnly(2025, 10, 1))).Require();
        SupplyOperations.Add(bench, SupplyRequest.Bottle(bench.Catalog.Solvents.Named("ethanol-95").Require(), VolumeText.Read(alcohol, "").Require(), new DateOnly(2026, 3, 1))).Require();
    }

    internal Workbench Bench() => Workbench.Open(Request with { Now = Now }, _ => null).Require();

    internal Task<Page> Get(string path) => Send(new HttpRequestMessage(HttpMethod.Get, path));

    /// <summary>Fills in a form as a browser does: its hidden fields come along.</summary>
    internal async Task<Page> Fill(string path, params (string Name, string Value)[] fields) => await Post(path, [.. Hidden((await Get(path)).Text), .. fields]);

    internal Task<Page> Post(string path, IEnumerable<(string Name, string Value)> fields, string? origin = "")
    {
        var request = new HttpRequestMessage(HttpMethod.Post, path) { Content = new FormUrlEncodedContent(fields.Select(f => KeyValuePair.Create(f.Name, f.Value))) };
        if (origin is not null)
        {
            request.Headers.Add("Origin", origin.Length == 0 ? Origin : origin);
        }

        return Send(request);
    }

    /// <summary>Sends a photo of labels as a browser does, with the form's mark before it.</summary>
    internal async Task<Page> Photo(byte[] photo, string? token = null)
    {
        token ??= Hidden((await Get("/scan")).Text).First(field => field.Name == "token").Value;
        using var form = new MultipartFormDataContent { { new StringContent(token), "token" }, { new ByteArrayContent(photo), "photo", "photo.jpg" } };
        var request = new HttpRequestMessage(HttpMethod.Post, "/scan") { Content = form };
        request.Headers.Add("Origin", Origin);
        return await Send(request);
    }

    /// <summary>From now on the client is another host, at that address.</summary>
    internal void ComeFrom(string address)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Only Linux lets a program come from every address of the loopback network.");
        client.Dispose();
        client = ClientOf(server, IPAddress.Parse(address));
    }

    internal async Task<Page> Send(HttpRequestMessage request)
    {
        if (Cookie is not null)
        {
            request.Headers.Add("Cookie", Cookie);
        }

        using var response = await client.SendAsync(request);
        return new Page(
            (int)response.StatusCode,
            await response.Content.ReadAsStringAsync(),
            response.Headers.Location?.ToString(),
            response.Headers.Concat(response.Content.Headers).ToDictionary(h => h.Key, h => string.Join(",", h.Value), StringComparer.OrdinalIgnoreCase));
    }

    internal static (string Name, string Value)[] Hidden(string html) =>
        [.. HiddenField().Matches(html).Select(m => (m.Groups["name"].Value, WebUtility.HtmlDecode(m.Groups["value"].Value)))];

    /// <summary>Ends the server and starts it anew.</summary>
    internal void Restart()
    {
        client.Dispose();
        server.Dispose();
        server = start();
        client = ClientOf(server);
    }

    /// <summary>Ends the server as Ctrl-C does.</summary>
    internal void Stop() => server.Stop();

    public void Dispose()
    {
        client.Dispose();
        server.Dispose();
        Directory.Delete(root, recursive: true);
    }

    private HttpClient ClientOf(RunningServer server, IPAddress? from = null) =>
        new(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = false, ConnectCallback = (wanted, stop) => Connect(from ?? IPAddress.Loopback, wanted.DnsEndPoint.Port, stop), SslOptions = new() { RemoteCertificateValidationCallback = (_, certificate, _, _) => Trusts(certificate!) } }) { BaseAddress = new Uri(server.Address) };

    /// <summary>Looks at the certificate as somebody does who compared its fingerprint.</summary>
    private bool Trusts(X509Certificate certificate)
    {
        Shown = X509CertificateLoader.LoadCertificate(certificate.GetRawCertData());
        return true;
    }

    /// <summary>A connection to the server from an address of the loopback network.</summary>
    internal static async ValueTask<Stream> Connect(IPAddress from, int port, CancellationToken stop)
    {
        var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
        socket.Bind(new IPEndPoint(from, 0));
        await socket.ConnectAsync(new IPEndPoint(IPAddress.Loopback, port), stop);
        return new NetworkStream(socket, ownsSocket: true);
    }

    private WorkbenchOptions Request => new(Folder, Now);

    [GeneratedRegex("<input type=\"hidden\" name=\"(?<name>[^\"]*)\" value=\"(?<value>[^\"]*)\">")]
    private static partial Regex HiddenField();
}
