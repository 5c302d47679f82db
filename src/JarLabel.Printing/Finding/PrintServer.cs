using System.Globalization;
using JarLabel.Core;
using JarLabel.Printing.Ipp;
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
        ArgumentNullException.ThrowIfNull(environment);
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
        using var door = new IppDoor(PrinterAddress.OfServer(host, port, socket, "/"), patience);
        var answer = await door.Ask(IppOperation.CupsGetPrinters, Requests.Queues(door.Address.Uri, user), stop: stop).ConfigureAwait(false);
        return answer.Message is not { } message ? answer.Fault!
            : Result<IReadOnlyList<SeenPrinter>>.Of(message.Succeeded ? [.. message.Of(IppTag.PrinterGroup).Select(Seen).Where(p => p.Name.Length > 0)] : []);
    }

    private SeenPrinter Seen(IppGroup said)
    {
        var (facts, name) = (new PrinterFacts(said), said.Word("printer-name") ?? "");
        return new SeenPrinter(name, Queue(name).Uri, facts.Model, SeenPrinter.StateOf(facts), SeenHow.Queue);
    }
}
