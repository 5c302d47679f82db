using System.Globalization;
using System.Text.RegularExpressions;
using JarLabel.Hand;

namespace JarLabel.Tests.Store;

/// <summary>A mix and a thin killed at one write point after another: <c>strace</c> lists every call that changes something on the disk,
/// then kills the process as it enters the Nth of them. A few points in the usual run; all with <c>JARLABEL_WRITE_POINTS=all</c>.</summary>
public sealed partial class WritePointTests(ITestOutputHelper output)
{
    /// <summary>What a program killed by SIGKILL ends with.</summary>
    private const int Killed = 128 + 9;

    private static readonly string[] Calls = ["pwrite64", "write", "fsync", "fdatasync", "ftruncate", "rename", "link", "unlink", "mkdir"];

    [Fact]
    public void A_kill_at_a_write_point_loses_nothing_and_leaves_nothing_half_done()
    {
        OutsideProgram.Need("strace");
        var points = Points();
        Assert.Contains(points, p => p.Call == "rename");
        Assert.Contains(points, p => p.Call is "fsync" or "fdatasync");
        var tried = Environment.GetEnvironmentVariable("JARLABEL_WRITE_POINTS") == "all" ? points : [.. points.Where((_, i) => i % 11 == 5)];
        foreach (var (call, count) in tried)
        {
            KillAt(call, count);
        }

        output.WriteLine($"{tried.Count} of {points.Count} write points tried.");
    }

    /// <summary>Every write point of one mix and one thin in a shop that has a jar already.</summary>
    private static List<(string Call, int Count)> Points()
    {
        using var shop = TempShop.With(jars: 1);
        var log = shop.Beside("calls.txt");
        var (code, said) = Trace(shop, "-o", log, "-e", "trace=" + string.Join(',', Calls));
        Assert.SkipWhen(code != 0 && said.Contains("ptrace", StringComparison.Ordinal), "This system lets no process trace another.");
        Assert.Equal(0, code);
        var busiest = File.ReadLines(log).Select(line => CallLine().Match(line)).Where(m => m.Success).GroupBy(m => m.Groups[1].Value).MaxBy(g => g.Count())!;
        return [.. busiest.GroupBy(m => m.Groups[2].Value).SelectMany(g => Enumerable.Range(1, g.Count()).Select(n => (g.Key, n)))];
    }

    private static void KillAt(string call, int count)
    {
        using var shop = TempShop.With(jars: 1);
        var (code, said) = Trace(shop, "-o", "/dev/null", "-e", "trace=" + call, "-e", string.Create(CultureInfo.InvariantCulture, $"inject={call}:signal=KILL:when={count}"));
        Assert.Equal(Killed, code);
        var accepted = said.Split('\n').Count(line => line.StartsWith("mixed", StringComparison.Ordinal) || line.StartsWith("thinned", StringComparison.Ordinal));
        using var ledger = shop.Open();
        var recorded = ledger.Record<long>(step => step.EventCount).Require() / 2 - 2;
        var when = $"{call} {count}";
        Assert.True(recorded >= accepted, when + ": an accepted step is lost");
        var report = ledger.Verify().Require();
        Assert.True(report.Sound && report.Notices.Count == 0, when + ": " + string.Join("; ", report.Damage.Concat(report.Notices)));
        Assert.Equal(recorded > 0 ? ["1.pdf", "2.pdf"] : ["1.pdf"], Directory.EnumerateFiles(shop.Folder.Labels).Select(Path.GetFileName).Order());
        Assert.Empty(Directory.EnumerateFiles(Path.Combine(shop.Folder.Path, "staging")));
        if (recorded > 0)
        {
            Assert.Equal(BenchWork.LabelOf(2, (int)recorded), File.ReadAllBytes(Path.Combine(shop.Folder.Labels, "2.pdf")));
        }
    }

    private static (int Code, string Said) Trace(TempShop shop, params string[] options) =>
        OutsideProgram.Run("strace", ["-f", "-qq", .. options, "dotnet", "exec", OutsideProgram.Hand, "work", shop.Folder.Path, "1", "60"]);

    [GeneratedRegex(@"^(\d+) +(\w+)\(")]
    private static partial Regex CallLine();
}
