using System.Diagnostics;
using System.Globalization;
using System.Net.Sockets;
using System.Text;

namespace JarLabel.Benchmarks.Web;

/// <summary>What a server bears: plain sockets, the next request as soon as the last one is answered.</summary>
/// <param name="PerSecond">Requests a second.</param>
/// <param name="P99">Ninety-nine of a hundred were answered within this.</param>
/// <param name="BytesPerRequest">Body of one answer.</param>
internal sealed record Load(double PerSecond, TimeSpan P99, double BytesPerRequest)
{
    internal static Load For(Served server, string path, int connections, TimeSpan time)
    {
        var clock = Stopwatch.StartNew();
        return Run(server, path, connections, _ => clock.Elapsed < time, clock);
    }

    internal static Load Of(Served server, string path, int connections, int requests) =>
        Run(server, path, connections, done => done < requests / connections, Stopwatch.StartNew());

    private static Load Run(Served server, string path, int connections, Func<int, bool> more, Stopwatch clock)
    {
        var request = Encoding.ASCII.GetBytes($"GET {path} HTTP/1.1\r\nHost: {server.Address.Authority}\r\n\r\n");
        var times = new List<double>[connections];
        var bytes = 0L;
        var threads = Enumerable.Range(0, connections).Select(i => new Thread(() =>
        {
            using var client = new TcpClient { NoDelay = true };
            client.Connect(server.Address.Host, server.Address.Port);
            var own = times[i] = [];
            var buffer = new byte[64 * 1024];
            for (var done = 0; more(done); done++)
            {
                var began = Stopwatch.GetTimestamp();
                client.Client.Send(request);
                var body = Answer(client.Client, buffer);
                own.Add(Stopwatch.GetElapsedTime(began).TotalMilliseconds);
                Interlocked.Add(ref bytes, body);
            }
        })).ToArray();
        Array.ForEach(threads, thread => thread.Start());
        Array.ForEach(threads, thread => thread.Join());
        double[] all = [.. times.SelectMany(t => t).Order()];
        return new Load(all.Length / clock.Elapsed.TotalSeconds, TimeSpan.FromMilliseconds(all[(int)(all.Length * 0.99)]), (double)bytes / all.Length);
    }

    /// <summary>Reads one whole answer, which must be 200; gives the length of its body.</summary>
    private static int Answer(Socket socket, byte[] buffer)
    {
        var (have, head) = (0, -1);
        while (head < 0)
        {
            have += Received(socket, buffer, have);
            head = buffer.AsSpan(0, have).IndexOf("\r\n\r\n"u8);
        }

        var text = Encoding.ASCII.GetString(buffer, 0, head);
        if (!text.StartsWith("HTTP/1.1 200", StringComparison.Ordinal))
        {
            throw new InvalidOperationException(text);
        }

        const string name = "Content-Length: ";
        var from = text.IndexOf(name, StringComparison.Ordinal) + name.Length;
        var end = text.IndexOf('\r', from);
        var length = int.Parse(text[from..(end < 0 ? text.Length : end)], CultureInfo.InvariantCulture);
        while (have < head + 4 + length)
        {
            have += Received(socket, buffer, have);
        }

        return length;
    }

    private static int Received(Socket socket, byte[] buffer, int at)
    {
        var more = socket.Receive(buffer, at, buffer.Length - at, SocketFlags.None);
        return more > 0 ? more : throw new InvalidOperationException("The server closed the connection.");
    }
}
