using System.Net.Sockets;

namespace JarLabel.Printing.Finding;

/// <summary>Asks the local network which printers there are: one question by multicast DNS (RFC 6762) for the services <c>_ipp._tcp</c> and
/// <c>_ipps._tcp</c> (RFC 6763), answered to us alone, over IPv4, and listened for as long as wanted. What a printer's answer leaves out is not
/// asked for again: printers send address, port and path along with their name.</summary>
public static class NetworkCall
{
    private static readonly string[] Services = ["_ipp._tcp.local", "_ipps._tcp.local"];

    /// <summary>Where all answer.</summary>
    public static IPEndPoint Everybody { get; } = new(IPAddress.Parse("224.0.0.251"), 5353);

    /// <summary>The printers that answered; none where there is no network.</summary>
    public static async Task<IReadOnlyList<SeenPrinter>> Listen(IPEndPoint to, TimeSpan span)
    {
        using var socket = new UdpClient(AddressFamily.InterNetwork);
        using var limit = new CancellationTokenSource(span);
        var records = new List<DnsRecord>();
        try
        {
            socket.Client.Bind(new IPEndPoint(IPAddress.Any, 0));
            await socket.SendAsync(DnsMessage.Question(Services), to, limit.Token).ConfigureAwait(false);
            while (true)
            {
                var answer = await socket.ReceiveAsync(limit.Token).ConfigureAwait(false);
                records.AddRange(DnsMessage.Read(answer.Buffer));
            }
        }
        catch (Exception fault) when (fault is SocketException or OperationCanceledException)
        {
            return Printers(records);
        }
    }

    private static IReadOnlyList<SeenPrinter> Printers(IReadOnlyList<DnsRecord> records) =>
    [
        .. Services.SelectMany(service => records.Where(r => r.Kind == DnsKind.PtrRecord && Same(r.Name, service)).Select(r => Printer(records, r.Target!, service)))
            .OfType<SeenPrinter>().DistinctBy(p => p.Name, StringComparer.OrdinalIgnoreCase).OrderBy(p => p.Name, StringComparer.Ordinal),
    ];

    private static SeenPrinter? Printer(IReadOnlyList<DnsRecord> records, string instance, string service)
    {
        if (records.FirstOrDefault(r => r.Kind == DnsKind.SrvRecord && Same(r.Name, instance)) is not { Target: { Length: > 0 } host } at)
        {
            return null;
        }

        var words = records.FirstOrDefault(r => r.Kind == DnsKind.TxtRecord && Same(r.Name, instance))?.Words ?? [];
        var address = records.FirstOrDefault(r => r.Kind == DnsKind.Address && Same(r.Name, host))?.Address?.ToString() ?? host;
        var scheme = service.StartsWith("_ipps", StringComparison.Ordinal) ? "ipps" : "ipp";
        var name = instance.EndsWith("." + service, StringComparison.OrdinalIgnoreCase) ? instance[..^(service.Length + 1)] : instance;
        return new SeenPrinter(name, $"{scheme}://{address}:{at.Port}/{Word(words, "rp") ?? "ipp/print"}", Word(words, "ty"), null, SeenHow.Network);
    }

    private static string? Word(IReadOnlyList<string> words, string key) =>
        words.FirstOrDefault(w => w.StartsWith(key + "=", StringComparison.OrdinalIgnoreCase)) is { } word && word.Length > key.Length + 1 ? word[(key.Length + 1)..] : null;

    private static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);
}
