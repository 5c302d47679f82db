namespace JarLabel.Tests.Printing;

/// <summary>A printer of somebody else's making: CUPS' reference printer on loopback, which keeps what it gets in a folder.</summary>
internal sealed class EvePrinter : IDisposable
{
    private const string Attributes = """
        ATTR mimeMediaType document-format-supported application/pdf,application/octet-stream
        ATTR mimeMediaType document-format-default application/pdf
        ATTR keyword media-supported na_letter_8.5x11in,na_index-4x6_4x6in
        ATTR keyword media-default na_letter_8.5x11in
        ATTR keyword media-ready na_letter_8.5x11in
        ATTR keyword media-col-supported media-size,media-top-margin,media-bottom-margin,media-left-margin,media-right-margin
        ATTR collection media-size-supported {
          MEMBER integer x-dimension 21590
          MEMBER integer y-dimension 27940
        },{
          MEMBER integer x-dimension 10160
          MEMBER integer y-dimension 15240
        }
        ATTR collection media-col-database {
          MEMBER collection media-size { MEMBER integer x-dimension 21590 MEMBER integer y-dimension 27940 }
          MEMBER integer media-top-margin 423 MEMBER integer media-bottom-margin 423 MEMBER integer media-left-margin 635 MEMBER integer media-right-margin 635
        }
        ATTR collection media-col-ready {
          MEMBER collection media-size { MEMBER integer x-dimension 21590 MEMBER integer y-dimension 27940 }
          MEMBER integer media-top-margin 423 MEMBER integer media-bottom-margin 423 MEMBER integer media-left-margin 635 MEMBER integer media-right-margin 635
        }
        ATTR keyword print-scaling-supported auto,auto-fit,fill,fit,none
        ATTR keyword print-scaling-default auto
        ATTR keyword sides-supported one-sided
        ATTR resolution printer-resolution-supported 600dpi
        ATTR keyword job-creation-attributes-supported media,media-col,print-scaling,sides,job-name

        """;

    private readonly Process process;
    private readonly string folder = Directory.CreateTempSubdirectory("jarlabel-eve-").FullName;

    private EvePrinter(int port)
    {
        var attributes = Path.Combine(folder, "label.conf");
        File.WriteAllText(attributes, Attributes);
        Spool = Directory.CreateDirectory(Path.Combine(folder, "spool")).FullName;
        var start = new ProcessStartInfo("dbus-run-session") { RedirectStandardError = true, RedirectStandardOutput = true };
        foreach (var argument in (string[])["--", "bash", "-c", "export DBUS_SYSTEM_BUS_ADDRESS=$DBUS_SESSION_BUS_ADDRESS; PATH=$PATH:/usr/sbin; exec ippeveprinter -vv -p \"$1\" -n localhost -r off -k -d \"$2\" -a \"$3\" Shop", "bash", port.ToString(CultureInfo.InvariantCulture), Spool, attributes])
        {
            start.ArgumentList.Add(argument);
        }

        process = Process.Start(start)!;
        process.OutputDataReceived += (_, line) => Log(line.Data);
        process.ErrorDataReceived += (_, line) => Log(line.Data);
        process.BeginErrorReadLine();
        process.BeginOutputReadLine();
        Uri = string.Create(CultureInfo.InvariantCulture, $"ipp://localhost:{port}/ipp/print");
    }

    public string Uri { get; }

    public string Spool { get; }

    private System.Text.StringBuilder Lines { get; } = new();

    public string Said
    {
        get
        {
            lock (Lines)
            {
                return Lines.ToString();
            }
        }
    }

    /// <summary>Starts one and waits until it takes connections; skips the test when it is not installed.</summary>
    public static async Task<EvePrinter> Start()
    {
        Assert.SkipUnless(File.Exists("/usr/sbin/ippeveprinter") || File.Exists("/usr/bin/ippeveprinter"), "ippeveprinter is not installed (Debian package cups-ipp-utils).");
        Assert.SkipUnless(File.Exists("/usr/bin/dbus-run-session"), "dbus-run-session is not installed (Debian package dbus).");
        var printer = new EvePrinter(FreePort());
        for (var tries = 0; tries < 100; tries++)
        {
            if (await Answers(new Uri(printer.Uri.Replace("ipp:", "http:", StringComparison.Ordinal)).Port))
            {
                return printer;
            }

            await Task.Delay(100);
        }

        printer.Dispose();
        Assert.Fail("ippeveprinter did not start: " + printer.Said);
        return printer;
    }

    public void Dispose()
    {
        process.Kill(entireProcessTree: true);
        process.WaitForExit();
        process.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    private void Log(string? line)
    {
        lock (Lines)
        {
            Lines.AppendLine(line);
        }
    }

    private static async Task<bool> Answers(int port)
    {
        using var client = new TcpClient();
        try
        {
            await client.ConnectAsync("localhost", port);
            return true;
        }
        catch (SocketException)
        {
            return false;
        }
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
