namespace JarLabel.Tests.Store;

/// <summary>A mix and a thin killed at one write point after another: <c>strace</c> lists every call that changes something on the disk,
/// then kills the process as it enters the Nth of them. A few points in the usual run; all with <c>JARLABEL_WRITE_POINTS=all</c>.</summary>
public sealed class WritePointTests(ITestOutputHelper output)
{
    [Fact]
    public void A_kill_at_a_write_point_loses_nothing_and_leaves_nothing_half_done()
    {
        OutsideProgram.Need("strace");
        var points = Points();
        Assert.Contains(points, p => p.Call == "rename");
        Assert.Contains(points, p => p.Call is "fsync" or "fdatasync");
        var tried = WritePoints.All ? points : [.. points.Where((_, i) => i % 11 == 5)];
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
        var (code, said) = Trace(shop, WritePoints.Listed(log));
        Assert.SkipWhen(code != 0 && said.Contains("ptrace", StringComparison.Ordinal), "This system lets no process trace another.");
        Assert.Equal(0, code);
        return WritePoints.In(File.ReadLines(log), shop.Folder.Path);
    }

    private static void KillAt(string call, int count)
    {
        using var shop = TempShop.With(jars: 1);
        var (code, said) = Trace(shop, WritePoints.KilledAt(call, count));
        Assert.Equal(WritePoints.Killed, code);
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

    private static (int Code, string Said) Trace(TempShop shop, string[] options) =>
        OutsideProgram.Run("strace", [.. options, "dotnet", "exec", OutsideProgram.Hand, "work", shop.Folder.Path, "1", "60"]);
}
