using System.Net;

namespace JarLabel.Printing.Finding;

/// <summary>One record of an answer.</summary>
/// <param name="Name">Whose.</param>
/// <param name="Kind">What it says.</param>
public sealed record DnsRecord(string Name, DnsKind Kind)
{
    /// <summary>The name that it leads to.</summary>
    public string? Target { get; init; }

    /// <summary>The port of a service.</summary>
    public int Port { get; init; }

    /// <summary>A host's address.</summary>
    public IPAddress? Address { get; init; }

    /// <summary>Words, each <c>key=value</c>.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];
}
