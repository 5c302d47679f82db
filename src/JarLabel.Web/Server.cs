using System.Net.Sockets;
using System.Security.Authentication;
using System.Security.Cryptography.X509Certificates;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.Extensions.DependencyInjection;

namespace JarLabel.Web;

/// <summary>Serves the shop's pages.</summary>
public static class Server
{
    /// <summary>A browser opens six at once; one host leaves room for others whatever it does.</summary>
    private const int MostConnections = 256, MostConnectionsOfOne = 32;

    /// <summary>Opens the shop and begins to listen; or says why not.</summary>
    public static Result<RunningServer> Start(ServeRequest request) =>
        request.Door.Open().Then(bench => Devices.Open(bench.Folder).Then(devices => Start(request, bench, devices)));

    private static Result<RunningServer> Start(ServeRequest request, Workbench bench, Devices devices)
    {
        var hosts = new Hosts(request.Lan, bench.Settings.BaseUrl?.Text);
        return !request.Encrypted ? Start(request, new Site(request, bench, devices, hosts), null)
            : ShopCertificate.Open(bench.Folder, hosts.Plain, TimeProvider.System.GetUtcNow(), keep: !bench.DryRun)
                .Then(certificate => Start(request, new Site(request, bench, devices, hosts) { Fingerprint = ShopCertificate.Fingerprint(certificate) }, certificate));
    }

    private static Result<RunningServer> Start(ServeRequest request, Site site, X509Certificate2? certificate)
    {
        // The empty builder reads no settings file and no environment: nothing from outside can open another door.
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions());
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel => Limit(kestrel, request, certificate));
        if (certificate is not null)
        {
            builder.WebHost.UseKestrelHttpsConfiguration();
        }

        var web = builder.Build();
        web.Run(site.Handle);
        try
        {
            web.StartAsync().GetAwaiter().GetResult();
        }
        catch (Exception fault) when (fault is IOException or SocketException)
        {
            return WebProblems.PortTaken($"{Endpoint(request)}", fault.InnerException?.Message ?? fault.Message);
        }

        var address = web.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
        return new RunningServer(web, address, site);
    }

    private static IPEndPoint Endpoint(ServeRequest request) => new(request.Lan ?? IPAddress.Loopback, request.Port);

    private static void Limit(KestrelServerOptions kestrel, ServeRequest request, X509Certificate2? certificate)
    {
        kestrel.AddServerHeader = false;
        var limits = kestrel.Limits;
        limits.MaxRequestBodySize = FormBody.Most;
        limits.MaxRequestLineSize = 4096;
        limits.MaxRequestHeadersTotalSize = 16 * 1024;
        limits.MaxConcurrentConnections = MostConnections;
        limits.RequestHeadersTimeout = TimeSpan.FromSeconds(10);
        limits.KeepAliveTimeout = TimeSpan.FromSeconds(30);
        limits.MinRequestBodyDataRate = new MinDataRate(240, TimeSpan.FromSeconds(5));
        kestrel.Listen(Endpoint(request), listen =>
        {
            listen.Protocols = HttpProtocols.Http1;
            if (request.Lan is not null)
            {
                var shares = new Shares(MostConnectionsOfOne, MostConnections);
                listen.Use(next => connection => Shared(shares, next, connection));
            }

            if (certificate is not null)
            {
                listen.UseHttps(certificate, tls => tls.SslProtocols = SslProtocols.Tls12 | SslProtocols.Tls13);
            }
        });
    }

    /// <summary>A connection within its host's share; one beyond it is closed unread.</summary>
    private static async Task Shared(Shares shares, ConnectionDelegate next, ConnectionContext connection)
    {
        using var share = shares.Take((connection.RemoteEndPoint as IPEndPoint)?.Address ?? IPAddress.None);
        if (share is null)
        {
            connection.Abort();
            return;
        }

        await next(connection);
    }
}

/// <summary>How the pages are to be served.</summary>
/// <param name="Port">The port; 0 for any that is free.</param>
/// <param name="Lan">The one address of this machine to listen on; null for this machine alone.</param>
/// <param name="Open">True lets everybody on that network read; else only paired devices. Recording always needs a paired device.</param>
/// <param name="Door">How the shop is opened for each request.</param>
/// <param name="Say">Where a line for the person at the terminal goes.</param>
public sealed record ServeRequest(int Port, IPAddress? Lan, bool Open, WorkbenchFactory Door, Action<string> Say)
{
    /// <summary>True to encrypt what is sent, with a certificate of the shop's own.</summary>
    public bool Encrypted { get; init; }
}

/// <summary>Opens the shop as it is at this moment, for one request.</summary>
/// <param name="request">How the person who started the server came to the bench.</param>
/// <param name="now">The moment that counts as now, local time.</param>
public sealed class WorkbenchFactory(WorkbenchOptions request, Func<DateTime> now)
{
    /// <summary>The moment that counts as now.</summary>
    public DateTime Now => now();

    /// <summary>The shop.</summary>
    /// <param name="seen">How many steps of its jar the form has seen; null where that does not matter.</param>
    /// <param name="rehearse">True to work a step out and record nothing.</param>
    /// <param name="at">The moment to use instead of now; null for now.</param>
    /// <param name="events">How many events of the ledger the form has seen; null where that does not matter.</param>
    /// <param name="unread">True to open it without its own settings and catalog.</param>
    /// <param name="came">The address by which somebody came; null for this machine's own.</param>
    public Result<Workbench> Open(int? seen = null, bool rehearse = false, DateTime? at = null, long? events = null, bool unread = false, string? came = null) =>
        Workbench.Open(request with { Now = at ?? now(), Dated = at is not null || request.Dated, Clock = now(), StepsSeen = seen, EventsSeen = events, DryRun = request.DryRun || rehearse, FilesUnread = unread, Came = came }, Environment.GetEnvironmentVariable);
}
