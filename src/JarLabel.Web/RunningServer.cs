using Microsoft.AspNetCore.Builder;

namespace JarLabel.Web;

/// <summary>A server that listens. Disposing of it ends it as <see cref="Stop"/> does.</summary>
public sealed class RunningServer : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    private readonly WebApplication web;
    private readonly Site site;
    private bool stopped;

    internal RunningServer(WebApplication web, string address, Site site)
    {
        this.web = web;
        Address = address;
        this.site = site;
    }

    /// <summary>Where it listens: <c>http://127.0.0.1:5080</c>.</summary>
    public string Address { get; }

    /// <summary>The SHA-256 fingerprint of the certificate; null where nothing is encrypted.</summary>
    public string? Fingerprint => site.Fingerprint;

    /// <summary>Where the codes on this shop's labels lead, as it was when the server began; null for nowhere.</summary>
    public string? CodesLead => site.CodesLead;

    /// <summary>The code that lets the next device record; null where none is needed.</summary>
    public string? PairingCode => site.PairingCode;

    /// <summary>Takes no new request, finishes those that are under way, takes back what is not printed yet, and ends.</summary>
    public void Stop()
    {
        if (stopped)
        {
            return;
        }

        stopped = true;
        using var patience = new CancellationTokenSource(Patience);
        web.StopAsync(patience.Token).GetAwaiter().GetResult();
        site.Stop();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Stop();
        ((IDisposable)web).Dispose();
        site.Dispose();
    }
}
