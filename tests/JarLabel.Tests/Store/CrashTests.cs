namespace JarLabel.Tests.Store;

/// <summary>Two processes at the bench of the same shop, each killed without warning (SIGKILL) at a random moment, again and again.
/// <c>JARLABEL_KILLS</c> asks for more kills, <c>JARLABEL_SEED</c> for other moments.</summary>
public sealed class CrashTests(ITestOutputHelper output)
{
    private const int LongestWorkInMilliseconds = 60;

    [Fact]
    public void Whatever_was_accepted_before_a_kill_is_there_and_nothing_is_half_there()
    {
        var kills = Setting("JARLABEL_KILLS", 200);
        var seed = Setting("JARLABEL_SEED", 20260309);
        var random = new Random(seed);
        using var shop = TempShop.With(jars: 1);
        var accepted = new HashSet<(int Jar, int Revision)> { (1, 1), (1, 2) };
        var (interrupted, settled) = (0, 0);
        for (var round = 0; round < kills / 2; round++)
        {
            accepted.UnionWith(WorkUntilKilled(shop, Delay(random), Delay(random)));
            interrupted += LeftoversIn(shop) > 0 ? 1 : 0;
            settled += AssertWhole(shop, accepted, $"seed {seed}, round {round + 1}");
        }

        output.WriteLine($"{kills} kills in rounds of two, seed {seed}: {interrupted} rounds left a file or a note behind, {settled} a recorded step whose file was not yet in its place; {accepted.Count} steps accepted.");
        Assert.True(interrupted > 0, "No kill struck while a step was under way.");
        Assert.True(shop.Verify().Sound);
    }

    private static TimeSpan Delay(Random random) => TimeSpan.FromMilliseconds(random.NextDouble() * LongestWorkInMilliseconds);

    private static List<(int Jar, int Revision)> WorkUntilKilled(TempShop shop, TimeSpan first, TimeSpan second)
    {
        using var one = OutsideProgram.StartHand("work", shop.Folder.Path, "100000", "60");
        using var other = OutsideProgram.StartHand("work", shop.Folder.Path, "100000", "60");
        string[] begun = [one.StandardOutput.ReadLine()!, other.StandardOutput.ReadLine()!];
        var since = Stopwatch.GetTimestamp();
        KillAt(one, since, first);
        KillAt(other, since, second);
        return [.. begun.Concat(Rest(one)).Concat(Rest(other)).Select(Step)];
    }

    private static void KillAt(Process hand, long since, TimeSpan delay)
    {
        while (Stopwatch.GetElapsedTime(since) < delay)
        {
            Thread.SpinWait(100);
        }

        hand.Kill();
    }

    private static string[] Rest(Process hand)
    {
        var told = hand.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        hand.WaitForExit();
        return told;
    }

    private static (int Jar, int Revision) Step(string line) => line.Split(' ') switch
    {
        ["mixed", var jar] => (Int(jar), 1),
        ["thinned", var jar, var revision] => (Int(jar), Int(revision)),
        _ => throw new InvalidOperationException(line),
    };

    /// <summary>Opens the shop as the next command does; returns 1 when it found a move to finish.</summary>
    private static int AssertWhole(TempShop shop, HashSet<(int Jar, int Revision)> accepted, string when)
    {
        var waiting = Waiting(shop);
        using var ledger = shop.Open();
        ledger.Record<int>(_ => 0).Require();
        Assert.True(LeftoversIn(shop) == 0, when + ": something was left lying");
        var report = ledger.Verify().Require();
        Assert.True(report.Sound && report.Notices.Count == 0, when + ": " + string.Join("; ", report.Damage.Concat(report.Notices)));
        var events = ledger.Look(view => view.Events().ToList()).Require();
        Assert.True(events.Chunk(2).All(IsStep), when + ": a step is half there");
        var recorded = events.Where(e => e.Kind != "Labelled").Select(e => (e.Of.Number, e.Revision)).ToHashSet();
        Assert.True(recorded.IsSupersetOf(accepted), when + ": an accepted step is lost");
        var last = recorded.Max();
        Assert.Equal(BenchWork.LabelOf(last.Number, last.Revision), File.ReadAllBytes(Path.Combine(shop.Folder.Labels, $"{last.Number}.pdf")));
        Assert.Equal(last.Number, Directory.EnumerateFileSystemEntries(shop.Folder.Labels).Count());
        return waiting;
    }

    private static int Waiting(TempShop shop)
    {
        using var ledger = shop.Open(LedgerMode.Read);
        var last = ledger.Look(view => view.Events().Last()).Require();
        var label = Path.Combine(shop.Folder.Labels, $"{last.Of.Number}.pdf");
        return File.Exists(label) && File.ReadAllBytes(label).AsSpan().SequenceEqual(BenchWork.LabelOf(last.Of.Number, last.Revision)) ? 0 : 1;
    }

    private static bool IsStep(EventRow[] pair) =>
        pair is [{ Kind: "Mixed" or "Thinned" } first, { Kind: "Labelled" } second] && first.Of == second.Of && first.Revision == second.Revision;

    private static int LeftoversIn(TempShop shop) =>
        Directory.EnumerateFiles(shop.Folder.Labels, ".*").Count() + Directory.EnumerateFiles(Path.Combine(shop.Folder.Path, "staging")).Count();

    private static int Setting(string variable, int usual) =>
        int.TryParse(Environment.GetEnvironmentVariable(variable), NumberStyles.None, CultureInfo.InvariantCulture, out var value) ? value : usual;

    private static int Int(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
