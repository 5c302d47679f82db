using System.Net.Sockets;

namespace JarLabel.Web.Guards;

/// <summary>Counts what comes from each address within a window of time and says when it is too much. An IPv6 host has a whole network of
/// addresses (/64), which count as one.</summary>
internal sealed class RateLimiter(int most, TimeSpan window, TimeProvider clock)
{
    private const int MostAddresses = 4096;
    private const int NetworkBytes = 8;

    private readonly Lock gate = new();
    private readonly Dictionary<IPAddress, int> counts = [];
    private long began = clock.GetTimestamp();

    /// <summary>Counts one more; false when there were too many.</summary>
    internal bool Count(IPAddress from)
    {
        lock (gate)
        {
            Turn();
            var key = Network(from);
            return (counts[key] = counts.GetValueOrDefault(key) + 1) <= most;
        }
    }

    /// <summary>True when that address had its share.</summary>
    internal bool Spent(IPAddress from)
    {
        lock (gate)
        {
            Turn();
            return counts.GetValueOrDefault(Network(from)) >= most;
        }
    }

    private static IPAddress Network(IPAddress from)
    {
        if (from.AddressFamily != AddressFamily.InterNetworkV6 || from.IsIPv4MappedToIPv6)
        {
            return from;
        }

        var bytes = from.GetAddressBytes();
        bytes.AsSpan(NetworkBytes).Clear();
        return new IPAddress(bytes);
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
