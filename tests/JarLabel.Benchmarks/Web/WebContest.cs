using System.Globalization;

namespace JarLabel.Benchmarks.Web;

/// <summary>A jar's page against a bare "hello" of the same server, each in a process of its own, asked over the same connections in turn;
/// then memory over many requests.</summary>
internal static class WebContest
{
    internal const string Child = "web-child";

    private const int Rounds = 5;
    private const int Connections = 16;
    private const int ForMemory = 200_000;
    private static readonly TimeSpan Long = TimeSpan.FromSeconds(4);

    internal static void Run()
    {
        using var jar = new Served("jar");
        using var hello = new Served("hello");
        var (ours, bare) = (new List<Load>(), new List<Load>());
        Load.For(jar, "/J/1-9.1", Connections, Long);
        Load.For(hello, "/", Connections, Long);
        for (var round = 0; round < Rounds; round++)
        {
            ours.Add(Load.For(jar, "/J/1-9.1", Connections, Long));
            bare.Add(Load.For(hello, "/", Connections, Long));
        }

        var (page, floor) = (Median(ours), Median(bare));
        Say($"{Connections} connections, median of {Rounds} runs of {Long.TotalSeconds} s, {Environment.ProcessorCount} processors, {page.BytesPerRequest / 1024.0:0.0} KB a page");
        Say($"jar page    {page.PerSecond,8:0} requests/s   p99 {page.P99.TotalMilliseconds:0.0} ms   {page.PerSecond / floor.PerSecond:0.00} x bare hello");
        Say($"bare hello  {floor.PerSecond,8:0} requests/s   p99 {floor.P99.TotalMilliseconds:0.0} ms");
        Memory(jar);
    }

    internal static void RunChild(string name) => Served.Serve(name);

    private static void Memory(Served jar)
    {
        Say($"memory of the server over {ForMemory} more requests:");
        for (var done = 0; done <= ForMemory; done += ForMemory / 5)
        {
            if (done > 0)
            {
                Load.Of(jar, "/J/1-9.1", Connections, ForMemory / 5);
            }

            Say($"  after {done,7}  {jar.Megabytes:0.0} MB");
        }
    }

    private static Load Median(List<Load> loads) => loads.OrderBy(load => load.PerSecond).ElementAt(loads.Count / 2);

    private static void Say(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
