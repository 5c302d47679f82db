using System.Net.Sockets;

namespace JarLabel.Web.Guards;

/// <summary>Who comes from where: an IPv6 host has a whole network of addresses (/64), which count as one.</summary>
internal static class HostAddress
{
    private const int NetworkBytes = 8;

    internal static IPAddress Of(IPAddress from)
    {
        if (from.IsIPv4MappedToIPv6)
        {
            return from.MapToIPv4();
        }

        if (from.AddressFamily != AddressFamily.InterNetworkV6)
        {
            return from;
        }

        var bytes = from.GetAddressBytes();
        bytes.AsSpan(NetworkBytes).Clear();
        return new IPAddress(bytes);
    }
}
