using JarLabel.Printing;
using JarLabel.Printing.Finding;

namespace JarLabel.Operations.Printing;

/// <summary>The printers that a shop can name: its own names first, then addresses, then the queues of this machine.</summary>
public sealed class PrinterBook(Workbench bench, Func<string, string?> environment)
{
    private static readonly PrintPatience Short = PrintPatience.Usual with { Connect = TimeSpan.FromSeconds(2), Answer = TimeSpan.FromSeconds(4) };

    private readonly PrintServer server = PrintServer.Find(environment);

    /// <summary>Who prints, as printers show it.</summary>
    internal static string User => Environment.UserName is { Length: > 0 } name ? name : "jarlabel";

    /// <summary>The printer that is meant, still unasked.</summary>
    public Result<PrinterAddress> Named(string text, string where)
    {
        var name = text.Trim();
        if (bench.Settings.Printers.FirstOrDefault(p => p.Name == name) is { } known)
        {
            return PrinterAddress.Read(known.Uri, where);
        }

        if (name.Contains("://", StringComparison.Ordinal))
        {
            return PrinterAddress.Read(name, where);
        }

        var queues = server.Queues(PrintPatience.Usual, User).GetAwaiter().GetResult().TryGet(out var found, out _) ? found : [];
        return queues.Any(q => q.Name == name)
            ? server.Queue(name)
            : PrintingProblems.NoSuchPrinter(name, [.. bench.Settings.Printers.Select(p => p.Name), .. queues.Select(q => q.Name)], where);
    }

    /// <summary>The names that can be chosen: the shop's, then the queues of this machine. Nobody is asked how it stands.</summary>
    public IReadOnlyList<string> Names() => [.. bench.Settings.Printers.Select(p => p.Name)
        .Concat(server.Queues(Short, User).GetAwaiter().GetResult().TryGet(out var queues, out _) ? queues.Select(q => q.Name) : [])
        .Distinct(StringComparer.Ordinal)];

    /// <summary>A printer by one of its names. Who comes over a network may choose among them and not make this machine call another address.</summary>
    public Result<string> Offered(string name, string where)
    {
        if (bench.Settings.Printers.Any(p => p.Name == name))
        {
            return name;
        }

        var names = Names();
        return names.Contains(name, StringComparer.Ordinal) ? name : PrintingProblems.NoSuchPrinter(name, names, where);
    }

    /// <summary>All of them, each asked how it stands.</summary>
    /// <param name="listen">How long to listen for printers on the network; null not to.</param>
    public IReadOnlyList<SeenPrinter> All(TimeSpan? listen)
    {
        var queues = server.Queues(PrintPatience.Usual, User);
        var network = listen is { } span ? NetworkCall.Listen(NetworkCall.Everybody, span) : Task.FromResult<IReadOnlyList<SeenPrinter>>([]);
        SeenPrinter[] named = [.. bench.Settings.Printers.Select(p => Asked(new SeenPrinter(p.Name, p.Uri, null, null, SeenHow.Named)))];
        IReadOnlyList<SeenPrinter> seen = queues.GetAwaiter().GetResult().TryGet(out var found, out _) ? found : [];
        return [.. named, .. seen, .. network.GetAwaiter().GetResult().Select(Asked)];
    }

    private static SeenPrinter Asked(SeenPrinter printer) => PrinterAddress.Read(printer.Uri, "print-to").Then(address =>
    {
        using var asked = new Printer(address, Short, User);
        return asked.Facts().GetAwaiter().GetResult();
    }).TryGet(out var facts, out var problems)
        ? printer with { Model = facts.Model ?? printer.Model, State = SeenPrinter.StateOf(facts) }
        : printer with { State = problems[0].Message };
}
