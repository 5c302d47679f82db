using System.Text.Json.Serialization;
using JarLabel.Core.Labels;
using JarLabel.Layout.Codes;

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
                ("codes on labels", LabelAddress.Leads(server.CodesLead, server.Address) ? "open their jar here"
                    : $"{(server.CodesLead is { } other ? $"open {other}, not these pages" : "open nothing on a telephone yet")}; \"jarlabel shop set base-url {server.Address}\" lets those printed from then on open their jar here"),
                server.Fingerprint is { } ? ("secrecy", "what is sent is encrypted; a browser warns once, because the shop itself made the certificate: compare the fingerprint before going on")
                    : ("no secrecy", "nothing is encrypted on the way: a network of your own, never one that guests share, or --https"),
                Fingerprint(server));
        }
        else
        {
            screen.Rows(("who", "this machine alone; --lan ADDRESS opens them to a telephone or tablet"), Fingerprint(server));
        }

        return Answer.Of(
            screen.Rows(("stop", "Ctrl-C")),
            new ServeAnswerJson(server.Address, server.PairingCode) { CertificateSha256 = server.Fingerprint },
            () => ServeContext.Default.ServeAnswerJson);
    }

    private static (string, string?) Fingerprint(RunningServer server) => ("fingerprint", server.Fingerprint is { } print ? $"{print} (SHA-256 of the certificate)" : null);

    internal static Answer Devices(IReadOnlyList<Device> devices) => Answer.Of(
        devices.Count == 0
            ? new Screen().Title("No device is paired").NextInWords("jarlabel serve --lan 192.168.1.20")
            : new Screen().Title("Paired devices").Gap()
                .Table([" number", "name", "paired"], [.. devices.Select(d => (string[])[d.Id, d.Name, DateWords.Of(d.Paired)])])
                .NextInWords($"jarlabel serve revoke {devices[^1].Id}"),
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

/// <summary>A paired device for a program; its token is known to it alone.</summary>
internal sealed record DeviceJson(string Id, string Name, string Paired)
{
    internal static DeviceJson Of(Device device) => new(device.Id, device.Name, device.Paired.ToString("yyyy-MM-ddTHH:mm", CultureInfo.InvariantCulture));
}

/// <summary>What <c>serve devices</c> says to a program.</summary>
internal sealed record DevicesAnswerJson(IReadOnlyList<DeviceJson> Devices);

/// <summary>A text of help.</summary>
/// <param name="Topic">Its name; empty for where to begin.</param>
/// <param name="Text">The text.</param>
internal sealed record HelpAnswerJson(string Topic, string Text);

/// <summary>What <c>publish</c> says to a program.</summary>
internal sealed record PublishAnswerJson(string Folder, int Pages, long Bytes);

/// <summary>What <c>serve</c> says to a program once it listens.</summary>
internal sealed record ServeAnswerJson(string Address, string? PairingCode)
{
    /// <summary>The fingerprint of the certificate; left out where nothing is encrypted.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? CertificateSha256 { get; init; }
}

/// <summary>The compiled shapes of what only <c>serve</c> and <c>publish</c> print.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(HelpAnswerJson))]
[JsonSerializable(typeof(ServeAnswerJson))]
[JsonSerializable(typeof(PublishAnswerJson))]
[JsonSerializable(typeof(DevicesAnswerJson))]
internal sealed partial class ServeContext : JsonSerializerContext;
