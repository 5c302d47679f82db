using System.Net;

namespace JarLabel.Cli.Commands;

/// <summary><c>serve</c>: the same on a telephone or tablet, until Ctrl-C.</summary>
internal static class ServeCommand
{
    private const int UsualPort = 5080;
    private const int HighestPort = 65535;

    private static readonly Option<string> Port = new("--port") { Description = "The port (else 5080).", HelpName = "port" };
    private static readonly Option<string> Lan = new("--lan") { Description = "The address of this machine to open to its network: 192.168.1.20. Else this machine alone.", HelpName = "address" };
    private static readonly Option<bool> Open = new("--open") { Description = "With --lan: everybody on that network may read; else only paired devices." };
    private static readonly Option<bool> Https = new("--https") { Description = "Encrypt what is sent, with a certificate of the shop's own; browsers warn of it once." };
    private static readonly Argument<string> Device = new("DEVICE") { Description = "The device's number, as \"serve devices\" shows it." };

    internal static Command Create(Runner runner)
    {
        var command = new Command("serve", "Jars, mixing and thinning on a telephone or tablet, until Ctrl-C.")
        {
            runner.Runs(new Command("devices", "The devices that may record."), (_, session) => All(session).Then<Answer>(all => ServeAnswer.Devices(all))),
            runner.Runs(new Command("revoke", "Take a device's right to record.") { Device }, Revoke),
        };
        command.Add(Port);
        command.Add(Lan);
        command.Add(Open);
        command.Add(Https);
        return runner.Stays(command, Run);
    }

    private static Result<bool> Run(ParsedLine typed, WorkbenchFactory factory, Terminal terminal)
    {
        var port = typed.Value(Port, ValueReader.WholeNumber(0, HighestPort, UsualPort)) ?? UsualPort;
        var lan = typed.Fact(Lan, Address);
        return typed.Then(() => Server.Start(new ServeRequest(port, lan, typed.Switch(Open), factory, terminal.Errors.WriteLine) { Encrypted = typed.Switch(Https) }).Then<bool>(server =>
        {
            using (server)
            {
                Stay(() => terminal.Say(ServeAnswer.Listening(server, typed.Switch(Open), terminal.Styled), typed.Switch(SharedOptions.Json)));
            }

            return true;
        }));
    }

    /// <summary>Tells that it is ready, then waits for Ctrl-C or a request to end.</summary>
    private static void Stay(Action ready)
    {
        using var stop = new ManualResetEventSlim();
        using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, Stop);
        using var terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Stop);
        ready();
        stop.Wait();

        void Stop(PosixSignalContext signal)
        {
            signal.Cancel = true;
            stop.Set();
        }
    }

    private static Result<Answer> Revoke(ParsedLine typed, Session session) => Devices.Open(session.Workbench.Folder)
        .Then(devices => session.Workbench.DryRun ? devices.All() : devices.Revoke(typed.Needed<string>(Device, (text, _) => text)).Then(_ => devices.All()))
        .Then<Answer>(all => ServeAnswer.Devices(all));

    private static Result<IReadOnlyList<Device>> All(Session session) => Devices.Open(session.Workbench.Folder).Then(devices => devices.All());

    private static Result<IPAddress> Address(string text, string where) =>
        IPAddress.TryParse(text.Trim(), out var address) && !IPAddress.Any.Equals(address) && !IPAddress.IPv6Any.Equals(address) && address.ToString() == text.Trim()
            ? address
            : WebProblems.NotAnAddress(text);
}
