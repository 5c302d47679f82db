using JarLabel.Core.Labels;
using JarLabel.Layout.Codes;
using JarLabel.Web;
using JarLabel.Web.Guards;

namespace JarLabel.Cli.Answers;

/// <summary>What <c>serve</c> and <c>serve devices</c> say.</summary>
internal static class ServeAnswer
{
    /// <summary>Where the pages are, and on a network the code for the first device, as a code to photograph too.</summary>
    internal static Answer Listening(RunningServer server, bool open, bool styled)
    {
        var screen = new Screen().Title($"Pages at {server.Address}/").Gap();
        if (server.PairingCode is { } code)
        {
            Code(screen, $"{server.Address}/pair?code={code.Replace(" ", "", StringComparison.Ordinal)}", styled);
            screen.Rows(
                ("pairing code", code),
                ("to record", "a device gives this code once; without it nothing can be recorded"),
                ("to read", open ? "everybody on this network" : "paired devices; --open lets everybody on this network"),
                ("no secrecy", "nothing is encrypted on the way: a network of your own, never one that guests share"));
        }
        else
        {
            screen.Rows(("who", "this machine alone; --lan ADDRESS opens them to a telephone or tablet"));
        }

        return Answer.Of(
            screen.Rows(("stop", "Ctrl-C")),
            new ServeAnswerJson(server.Address, server.PairingCode),
            () => ServeContext.Default.ServeAnswerJson);
    }

    internal static Answer Devices(IReadOnlyList<Device> devices) => Answer.Of(
        devices.Count == 0
            ? new Screen().Title("No device is paired").Next("jarlabel serve --lan 192.168.1.20")
            : new Screen().Title("Paired devices").Gap()
                .Table([" number", "name", "paired"], [.. devices.Select(d => (string[])[d.Id, d.Name, DateWords.Of(d.Paired)])])
                .Next($"jarlabel serve revoke {devices[^1].Id}"),
        new DevicesAnswerJson([.. devices.Select(DeviceJson.Of)]),
        () => ServeContext.Default.DevicesAnswerJson);

    private static void Code(Screen screen, string address, bool styled)
    {
        if (!styled)
        {
            return;
        }

        // Black on white whatever the terminal's own colours are: cameras want a light ground.
        foreach (var line in QrText.Lines(QrEncoder.Encode(address)))
        {
            screen.Text($"\e[30;107m{line}\e[0m");
        }

        screen.Gap();
    }
}
