using JarLabel.Tests.Store;

namespace JarLabel.Acceptance.Kills;

/// <summary>A real <c>mix</c> and a real <c>thin</c> killed at one write point after another: <c>strace</c> lists every call that changes
/// something in the shop folder, then kills the program as it enters the Nth of them. A few points in the usual run, every third with
/// the native program, all with <c>JARLABEL_WRITE_POINTS=all</c>.</summary>
public sealed class WritePointKillTests(ITestOutputHelper output) : IDisposable
{
    private readonly Shop fresh = new();

    public void Dispose() => fresh.Dispose();

    [Theory]
    [InlineData("mix", "--grade", "garnet", "--cut", "2", "--pour", "350 mL", "--solvent", "ethanol-95", "--at", "2026-03-09T09:30", "--json")]
    [InlineData("thin", "1", "--to", "1.5", "--at", "2026-03-10T09:30", "--json")]
    public void A_kill_at_a_write_point_loses_nothing_and_leaves_nothing_half_done(params string[] step)
    {
        fresh.Json("mix", "--grade", "garnet", "--cut", "2", "--pour", "350 mL", "--solvent", "ethanol-95", "--at", "2026-03-09T09:00");
        var points = Points(step);
        Assert.Contains(points, p => p.Call is "rename" or "renameat2");
        Assert.Contains(points, p => p.Call is "fsync" or "fdatasync");
        var apart = WritePoints.All ? 1 : Place.IsNative ? 3 : 31;
        var tried = points.Where((_, i) => i % apart == apart / 2).ToList();
        var recorded = tried.Count(point => KillAt(point.Call, point.Count, step));
        Assert.InRange(recorded, 1, tried.Count - 1);
        output.WriteLine($"{step[0]}: {tried.Count} of {points.Count} write points tried, {recorded} of them after the step was recorded.");
    }

    /// <summary>Every write point of the step, by call and by how many times its thread has made that call.</summary>
    private List<(string Call, int Count)> Points(string[] step)
    {
        using var shop = Copy();
        var log = Path.Combine(Path.GetTempPath(), Path.GetFileName(shop.Folder) + ".calls");
        try
        {
            var (code, _, errors) = Trace(shop, step, WritePoints.Listed(log));
            Assert.SkipWhen(code != 0 && errors.Contains("ptrace", StringComparison.Ordinal), "This system lets no process trace another.");
            Assert.True(code == 0, errors);
            return WritePoints.In(File.ReadLines(log), shop.Folder);
        }
        finally
        {
            File.Delete(log);
        }
    }

    /// <summary>True when the step was recorded before the kill.</summary>
    private bool KillAt(string call, int count, string[] step)
    {
        using var shop = Copy();
        var when = $"{step[0]} at {call} {count}: ";
        var (code, said, errors) = Trace(shop, step, WritePoints.KilledAt(call, count));
        Assert.True(code == WritePoints.Killed, when + "it was not killed. " + errors);
        var verified = shop.Run("verify");
        Assert.True(verified.ExitCode == 0 && verified.Errors.Length == 0, when + verified.Errors);
        var next = Told.Step(shop.Json("mix", "--grade", "garnet", "--cut", "2", "--pour", "350 mL", "--solvent", "ethanol-95", "--at", "2026-03-11").ToJsonString());
        var record = WholeRecord.Of(shop);
        record.AssertWhole(shop);
        Assert.Equal(next, record.Steps[^1]);
        var recorded = record.Steps.Count - 2;
        Assert.InRange(recorded, 0, 1);
        Assert.True(recorded == 1 || Told.Step(said) is null, when + "the step was told as done, and is lost");
        return recorded == 1;
    }

    private Shop Copy()
    {
        var copy = new Shop();
        foreach (var file in Directory.EnumerateFiles(fresh.Folder, "*", SearchOption.AllDirectories))
        {
            var place = Path.Combine(copy.Folder, Path.GetRelativePath(fresh.Folder, file));
            Directory.CreateDirectory(Path.GetDirectoryName(place)!);
            File.Copy(file, place);
        }

        return copy;
    }

    private static (int Code, string Said, string Errors) Trace(Shop shop, string[] step, string[] options)
    {
        using var process = Started(shop, [.. options, Place.Program, .. step]);
        var errors = process.StandardError.ReadToEndAsync();
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, said, errors.GetAwaiter().GetResult());
    }

    private static Process Started(Shop shop, string[] words)
    {
        try
        {
            return shop.StartUnder("strace", words);
        }
        catch (System.ComponentModel.Win32Exception)
        {
            Assert.Skip("strace is not installed.");
            throw;
        }
    }
}
