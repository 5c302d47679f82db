namespace JarLabel.Tests.Printing;

/// <summary>A printer on loopback that behaves as it is told, well or badly. It keeps what it was asked.</summary>
internal sealed class FaultyPrinter : IDisposable
{
    private readonly TcpListener listener = new(IPAddress.Loopback, 0);
    private readonly CancellationTokenSource closing = new();
    private readonly Dictionary<IppOperation, Func<Asked, Task>> manners = [];
    private readonly List<Asked> all = [];

    public FaultyPrinter()
    {
        listener.Start();
        On(IppOperation.GetPrinterAttributes, asked => Reply(asked, 0, Printer()));
        On(IppOperation.ValidateJob, asked => Reply(asked, 0));
        On(IppOperation.PrintJob, asked => Reply(asked, 0, Job(7, 5)));
        On(IppOperation.GetJobAttributes, asked => Reply(asked, 0, Job(7, 9, "job-completed-successfully")));
        On(IppOperation.GetJobs, asked => Reply(asked, 0));
        On(IppOperation.CancelJob, asked => Reply(asked, 0));
        _ = Task.Run(Listen);
    }

    public string Uri => $"ipp://127.0.0.1:{((IPEndPoint)listener.LocalEndpoint).Port}/ipp/print";

    public IReadOnlyList<Asked> Asked
    {
        get
        {
            lock (all)
            {
                return [.. all];
            }
        }
    }

    public Asked The(IppOperation operation) => Asked.First(a => a.Operation == operation);

    public int Count(IppOperation operation) => Asked.Count(a => a.Operation == operation);

    public void On(IppOperation operation, Func<Asked, Task> manner) => manners[operation] = manner;

    /// <summary>What a good label printer says of itself, with something else instead of some of it.</summary>
    public static IppGroup Printer(params IppField[] instead)
    {
        IppField[] usual =
        [
            Words("printer-name", "bench"),
            new("printer-state", [IppValue.Of(3, IppTag.Enum)]),
            Words("printer-state-reasons", "none"),
            new("printer-is-accepting-jobs", [IppValue.Of(true)]),
            new("document-format-supported", [IppValue.Of(IppTag.MimeType, "application/pdf")]),
            Words("media-supported", "na_letter_8.5x11in", "iso_a4_210x297mm"),
            Words("media-ready", "na_letter_8.5x11in"),
            Words("media-col-supported", "media-size"),
            Words("print-scaling-supported", "auto", "none"),
            Words("sides-supported", "one-sided", "two-sided-long-edge"),
        ];
        return new IppGroup(IppTag.PrinterGroup, [.. usual.Where(u => instead.All(i => i.Name != u.Name)), .. instead]);
    }

    public static IppField Words(string name, params string[] words) => new(name, [.. words.Select(IppValue.Keyword)]);

    public static IppField Numbers(string name, params int[] numbers) => new(name, [.. numbers.Select(n => IppValue.Of(n))]);

    public static IppGroup Job(int id, int state, string reason = "none", string? name = null, int? sheets = null) => new(IppTag.JobGroup,
    [
        new IppField("job-id", [IppValue.Of(id)]),
        new IppField("job-state", [IppValue.Of(state, IppTag.Enum)]),
        Words("job-state-reasons", reason),
        .. name is null ? Array.Empty<IppField>() : [new IppField("job-name", [IppValue.Of(IppTag.Name, name)])],
        .. sheets is { } done ? [Numbers("job-media-sheets-completed", done)] : Array.Empty<IppField>(),
    ]);

    /// <summary>Answers as the standard wants it.</summary>
    public static Task Reply(Asked asked, ushort status, params IppGroup[] groups) => asked.Respond("200 OK", "application/ipp", IppWriter.Bytes(new IppMessage(
        status, asked.Message.RequestId, [new IppGroup(IppTag.OperationGroup, [new IppField("attributes-charset", [IppValue.Of(IppTag.Charset, "utf-8")])]), .. groups])));

    public void Dispose()
    {
        closing.Cancel();
        listener.Stop();
        closing.Dispose();
    }

    private async Task Listen()
    {
        while (!closing.IsCancellationRequested)
        {
            try
            {
                var client = await listener.AcceptTcpClientAsync(closing.Token);
                _ = Task.Run(() => Serve(client));
            }
            catch (Exception fault) when (fault is OperationCanceledException or SocketException or ObjectDisposedException)
            {
                return;
            }
        }
    }

    private async Task Serve(TcpClient client)
    {
        using (client)
        {
            try
            {
                var stream = client.GetStream();
                while (await Request(stream) is { } body)
                {
                    var message = IppReader.Read(body, out var end)!;
                    var asked = new Asked((IppOperation)message.Code, message, body[end..], stream, client);
                    lock (all)
                    {
                        all.Add(asked);
                    }

                    await manners[asked.Operation](asked);
                }
            }
            catch (Exception fault) when (fault is IOException or SocketException or ObjectDisposedException or OperationCanceledException)
            {
                // The client went away, as it may.
            }
        }
    }

    private static async Task<byte[]?> Request(NetworkStream stream)
    {
        var head = new List<byte>();
        var one = new byte[1];
        while (!(head.Count > 4 && head[^4] == '\r' && head[^3] == '\n' && head[^2] == '\r'))
        {
            if (await stream.ReadAsync(one) == 0)
            {
                return null;
            }

            head.Add(one[0]);
        }

        var length = Encoding.ASCII.GetString([.. head]).Split("\r\n").First(l => l.StartsWith("Content-Length:", StringComparison.OrdinalIgnoreCase)).Split(':')[1];
        var body = new byte[int.Parse(length, System.Globalization.CultureInfo.InvariantCulture)];
        await stream.ReadExactlyAsync(body);
        return body;
    }
}
