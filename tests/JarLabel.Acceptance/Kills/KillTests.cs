namespace JarLabel.Acceptance.Kills;

/// <summary>A real <c>mix</c> and a real <c>thin</c> at once in the same shop, each killed without warning (SIGKILL) at a random moment, again
/// and again. Every other round the moment lies anywhere between start and end; in the rounds between it lies where the program
/// writes. <c>JARLABEL_KILLS</c> asks for more kills, <c>JARLABEL_SEED</c> for other moments; the native program gets 200.</summary>
public sealed class KillTests(ITestOutputHelper output) : IDisposable
{
    private readonly Shop shop = new();
    private readonly List<(int Jar, int Revision)> accepted = [];

    public void Dispose() => shop.Dispose();

    [Fact]
    public void What_was_told_as_done_is_there_after_any_kill_and_nothing_is_half_done()
    {
        var kills = Setting("JARLABEL_KILLS", Place.IsNative ? 200 : 20);
        var seed = Setting("JARLABEL_SEED", 20260309);
        var random = new Random(seed);
        accepted.Add(Told.Step(Say(Mix))!.Value);
        var (whole, writing) = Usual();
        var (killed, between) = (0, 0);
        for (var round = 0; round < kills / 2; round++)
        {
            var aimed = round % 2 == 1;
            var longest = aimed ? writing : whole;
            var struck = Strike(aimed, random.NextDouble() * longest, random.NextDouble() * longest, Thin(round));
            killed += struck.Count(died => died);
            between += Lying().Count > 0 ? 1 : 0;
            AssertSound($"seed {seed}, round {round + 1}");
            if (round % 3 == 2)
            {
                GoOn();
            }
        }

        GoOn();
        output.WriteLine($"{kills} kills, seed {seed}: {killed} struck a running program (usual run {whole:0} ms, of it writing {writing:0} ms), {between} rounds left a file or a log behind; {accepted.Count} steps told as done.");
        Assert.True(killed > kills / 4, "Hardly a kill struck a running program.");
        Assert.True(between > 0, "No kill struck while something was written.");
        var record = WholeRecord.Of(shop);
        record.AssertWhole(shop);
        record.AssertSheet(shop);
        Assert.Equal(accepted.Distinct(), accepted);
        Assert.Superset(accepted.ToHashSet(), record.Steps.ToHashSet());
    }

    private static string[] Mix => ["mix", "--grade", "garnet", "--cut", "2", "--pour", "350 mL", "--solvent", "ethanol-95", "--at", "2026-03-09T09:30", "--json"];

    /// <summary>Ever thinner, so that it is a thinning whether or not the one before was recorded.</summary>
    private static string[] Thin(int round) =>
        ["thin", "1", "--to", (2 * Math.Pow(0.99, round + 1)).ToString("0.#####", CultureInfo.InvariantCulture), "--at", "2026-03-10T09:30", "--json"];

    /// <summary>How long a run takes here, and how long after the first sign of writing, in milliseconds.</summary>
    private (double Whole, double Writing) Usual()
    {
        var since = Stopwatch.GetTimestamp();
        using var one = shop.Start(Mix);
        var said = one.StandardOutput.ReadToEndAsync();
        AwaitWriting(one, []);
        var begun = Stopwatch.GetElapsedTime(since).TotalMilliseconds;
        one.WaitForExit();
        var whole = Stopwatch.GetElapsedTime(since).TotalMilliseconds;
        accepted.Add(Told.Step(said.GetAwaiter().GetResult())!.Value);
        return (whole, Math.Max(whole - begun, 10));
    }

    /// <summary>Runs both and kills each at its moment; tells which of them were still running.</summary>
    private bool[] Strike(bool aimed, double first, double second, string[] thin)
    {
        var strikes = new[] { (Words: Mix, After: first), (Words: thin, After: second) };
        return [.. strikes.AsParallel().WithDegreeOfParallelism(2).Select(strike => Killed(strike.Words, aimed, strike.After))];
    }

    private bool Killed(string[] words, bool aimed, double after)
    {
        var before = Lying();
        using var process = shop.Start(words);
        var said = process.StandardOutput.ReadToEndAsync();
        if (aimed)
        {
            AwaitWriting(process, before);
        }

        process.WaitForExit(TimeSpan.FromMilliseconds(after));
        process.Kill();
        process.WaitForExit();
        if (Told.Step(said.GetAwaiter().GetResult()) is { } step)
        {
            lock (accepted)
            {
                accepted.Add(step);
            }
        }

        return process.ExitCode != 0;
    }

    private void AwaitWriting(Process process, IReadOnlyList<string> before)
    {
        while (!process.HasExited && !Lying().Except(before).Any())
        {
            Thread.Sleep(1);
        }
    }

    /// <summary>Signs of a step under way, or of one that was killed there: the log of the ledger, notes of files being written.</summary>
    private IReadOnlyList<string> Lying() =>
        [.. Directory.EnumerateFiles(shop.Folder, "ledger.db-*"), .. Directory.EnumerateFiles(Path.Combine(shop.Folder, "staging"))];

    /// <summary>The next mix works, and leaves nothing lying.</summary>
    private void GoOn()
    {
        accepted.Add(Told.Step(Say(Mix))!.Value);
        AssertSound("after the next mix");
        Assert.Empty(Lying());
    }

    private void AssertSound(string when)
    {
        var run = shop.Run("verify");
        Assert.True(run.ExitCode == 0 && run.Errors.Length == 0, $"{when}: {run.Errors}");
    }

    private string Say(string[] words)
    {
        var run = shop.Run(words);
        Assert.True(run.ExitCode == 0, run.Errors);
        return run.Result;
    }

    private static int Setting(string variable, int usual) =>
        int.TryParse(Environment.GetEnvironmentVariable(variable), NumberStyles.None, CultureInfo.InvariantCulture, out var value) ? value : usual;
}
