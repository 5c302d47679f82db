namespace JarLabel.Web.Guards;

/// <summary>Hands out what there is only so much of at a time, so that no single host takes it all.</summary>
/// <param name="mostOfOne">How many one host may hold.</param>
/// <param name="mostOfAll">How many there are.</param>
internal sealed class Shares(int mostOfOne, int mostOfAll)
{
    private readonly Lock gate = new();
    private readonly Dictionary<IPAddress, int> held = [];
    private int all;

    /// <summary>One for a host, which gives it back by disposing of it; null when it has its share or there is none left.</summary>
    internal IDisposable? Take(IPAddress from)
    {
        var host = HostAddress.Of(from);
        lock (gate)
        {
            var own = held.GetValueOrDefault(host);
            if (own >= mostOfOne || all >= mostOfAll)
            {
                return null;
            }

            held[host] = own + 1;
            all++;
            return new Share(this, host);
        }
    }

    private void Give(IPAddress host)
    {
        lock (gate)
        {
            all--;
            if (--held[host] == 0)
            {
                held.Remove(host);
            }
        }
    }

    private sealed class Share(Shares of, IPAddress host) : IDisposable
    {
        private bool given;

        public void Dispose()
        {
            if (!Interlocked.Exchange(ref given, true))
            {
                of.Give(host);
            }
        }
    }
}
