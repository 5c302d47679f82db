namespace JarLabel.Web.Guards;

/// <summary>Counts what comes from each host within a window of time and says when it is too much.</summary>
internal sealed class RateLimiter(int most, TimeSpan window, TimeProvider clock)
{
    private const int MostAddresses = 4096;

    private readonly Lock gate = new();
    private readonly Dictionary<IPAddress, int> counts = [];
    private long began = clock.GetTimestamp();

    /// <summary>Counts one more; false when there were too many.</summary>
    internal bool Count(IPAddress from)
    {
        lock (gate)
        {
            Turn();
            var key = HostAddress.Of(from);
            return (counts[key] = counts.GetValueOrDefault(key) + 1) <= most;
        }
    }

    /// <summary>True when that address had its share.</summary>
    internal bool Spent(IPAddress from)
    {
        lock (gate)
        {
            Turn();
            return counts.GetValueOrDefault(HostAddress.Of(from)) >= most;
        }
    }

    private void Turn()
    {
        if (clock.GetElapsedTime(began) > window || counts.Count > MostAddresses)
        {
            counts.Clear();
            began = clock.GetTimestamp();
        }
    }
}
