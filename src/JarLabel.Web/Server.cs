using System.Net;
using System.Net.Sockets;
using JarLabel.Core;
using JarLabel.Web.Guards;
using JarLabel.Web.Serving;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.Extensions.DependencyInjection;

namespace JarLabel.Web;

/// <summary>Serves the shop's pages.</summary>
public static class Server
{
    /// <summary>Opens the shop and begins to listen; or says why not.</summary>
    public static Result<RunningServer> Start(ServeRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return request.Door.Open().Then(bench => Devices.Open(bench.Folder).Then(devices => Start(request, new Site(request, bench, devices))));
    }

    private static Result<RunningServer> Start(ServeRequest request, Site site)
    {
        // The empty builder reads no settings file and no environment: nothing from outside can open another door.
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions());
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel => Limit(kestrel, request));
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

    private static void Limit(KestrelServerOptions kestrel, ServeRequest request)
    {
        kestrel.AddServerHeader = false;
        var limits = kestrel.Limits;
        limits.MaxRequestBodySize = FormBody.Most;
        limits.MaxRequestLineSize = 4096;
        limits.MaxRequestHeadersTotalSize = 16 * 1024;
        limits.MaxConcurrentConnections = 256;
        limits.RequestHeadersTimeout = TimeSpan.FromSeconds(10);
        limits.KeepAliveTimeout = TimeSpan.FromSeconds(30);
        limits.MinRequestBodyDataRate = new MinDataRate(240, TimeSpan.FromSeconds(5));
        kestrel.Listen(Endpoint(request), listen => listen.Protocols = HttpProtocols.Http1);
    }
}
