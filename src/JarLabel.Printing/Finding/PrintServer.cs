using JarLabel.Printing.Printers;
using JarLabel.Printing.Transport;

namespace JarLabel.Printing.Finding;

/// <summary>The print server of this machine, where it has one: CUPS, on Linux and macOS. Its queues are asked for over IPP like any printer.</summary>
public sealed class PrintServer
{
    private static readonly string[] UsualSockets = ["/run/cups/cups.sock", "/var/run/cups/cups.sock", "/private/var/run/cupsd"];

    private readonly string host;
    private readonly int port;
    private readonly string? socket;

    private PrintServer(string host, int port, string? socket) => (this.host, this.port, this.socket) = (host, port, socket);

    /// <summary>Where it is: as <c>CUPS_SERVER</c> says, else its usual socket, else port 631 of this machine.</summary>
    public static PrintServer Find(Func<string, string?> environment)
    {
        if (environment("CUPS_SERVER") is { Length: > 0 } named)
        {
            var parts = named.Split('/')[0].Split(':');
            return named[0] == '/' ? new PrintServer("localhost", PrinterAddress.UsualPort, named)
                : new PrintServer(parts[0], parts.Length > 1 && int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var read) ? read : PrinterAddress.UsualPort, null);
        }

        return new PrintServer("localhost", PrinterAddress.UsualPort, UsualSockets.FirstOrDefault(File.Exists));
    }

    /// <summary>The address of one of its queues.</summary>
    public PrinterAddress Queue(string name) => PrinterAddress.OfServer(host, port, socket, $"/printers/{Uri.EscapeDataString(name)}");

    /// <summary>Its queues; none where there is no server.</summary>
    public async Task<Result<IReadOnlyList<SeenPrinter>>> Queues(PrintPatience patience, string user, CancellationToken stop = default)
    {
        using var client = new IppClient(PrinterAddress.OfServer(host, port, socket, "/"), patience);
        var answer = await client.Ask(IppOperation.CupsGetPrinters, Requests.Queues(client.Address.Uri, user), stop: stop).ConfigureAwait(false);
        return answer.Message is not { } message ? answer.Fault!
            : Result<IReadOnlyList<SeenPrinter>>.Of(message.Succeeded ? [.. message.Of(IppTag.PrinterGroup).Select(Seen).Where(p => p.Name.Length > 0)] : []);
    }

    private SeenPrinter Seen(IppGroup said)
    {
        var (facts, name) = (new PrinterFacts(said), said.Word("printer-name") ?? "");
        return new SeenPrinter(name, Queue(name).Uri, facts.Model, SeenPrinter.StateOf(facts), SeenHow.Queue);
    }
}

/// <summary>How a printer came to be known.</summary>
public enum SeenHow
{
    /// <summary>The shop has named it.</summary>
    Named,

    /// <summary>A queue of this machine's print server.</summary>
    Queue,

    /// <summary>It answered a call on the network.</summary>
    Network,
}

/// <summary>A printer that can be named in <c>--to</c>.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Uri">Its address.</param>
/// <param name="Model">What it is; null when unsaid.</param>
/// <param name="State">How it stands, in words; null when nobody asked it.</param>
/// <param name="How">How it came to be known.</param>
public sealed record SeenPrinter(string Name, string Uri, string? Model, string? State, SeenHow How)
{
    /// <summary>How a printer stands, in a few words.</summary>
    public static string StateOf(PrinterFacts facts)
    {
        var ready = !facts.Accepts ? "takes no jobs" : facts.IsStopped ? "stands still" : facts.TakesPdf || facts.Formats.Count == 0 ? "ready" : "takes no PDF";
        return facts.Why is { } why ? $"{ready}: {why}" : ready;
    }
}
