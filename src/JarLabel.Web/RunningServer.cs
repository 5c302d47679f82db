using Microsoft.AspNetCore.Builder;

namespace JarLabel.Web;

/// <summary>A server that listens. Disposing of it ends it as <see cref="Stop"/> does.</summary>
public sealed class RunningServer : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    private readonly WebApplication web;
    private readonly Func<string?> pairingCode;
    private bool stopped;

    internal RunningServer(WebApplication web, string address, Func<string?> pairingCode)
    {
        this.web = web;
        Address = address;
        this.pairingCode = pairingCode;
    }

    /// <summary>Where it listens: <c>http://127.0.0.1:5080</c>.</summary>
    public string Address { get; }

    /// <summary>The code that lets the next device record; null where none is needed.</summary>
    public string? PairingCode => pairingCode();

    /// <summary>Takes no new request, finishes those that are under way, and ends.</summary>
    public void Stop()
    {
        if (stopped)
        {
            return;
        }

        stopped = true;
        using var patience = new CancellationTokenSource(Patience);
        web.StopAsync(patience.Token).GetAwaiter().GetResult();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Stop();
        ((IDisposable)web).Dispose();
    }
}
