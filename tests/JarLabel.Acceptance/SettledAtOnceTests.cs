namespace JarLabel.Acceptance;

/// <summary>What a shop settles, changed by many programs at the same moment: every change that was told as done is kept.</summary>
public sealed class SettledAtOnceTests : IDisposable
{
    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public void Twenty_settings_at_once_are_all_kept()
    {
        AllSucceed(Enumerable.Range(1, 20).Select(n => (string[])["shop", "set", "shelf", $"shelf{n}=18 C"]));
        var shelves = shop.Json("shop", "show")["shelves"]!.AsArray().Select(shelf => shelf!["name"]!.GetValue<string>()).ToHashSet();
        Assert.Superset(Enumerable.Range(1, 20).Select(n => $"shelf{n}").ToHashSet(), shelves);
        Assert.Empty(Directory.EnumerateFiles(shop.Folder, "*.part"));
    }

    [Fact]
    public void Twelve_measured_printers_at_once_are_all_kept_and_half_of_them_forgotten_at_once()
    {
        const string sheet = "letter-2x5-101.6x50.8";
        AllSucceed(Enumerable.Range(1, 12).Select(n => (string[])["calibrate", "--sheet", sheet, "--printer", $"printer{n}", "--dx", "0.5"]));
        Assert.Equal(12, Printers().Length);
        AllSucceed(Enumerable.Range(1, 6).Select(n => (string[])["calibrate", "--sheet", sheet, "--printer", $"printer{n}", "--forget"]));
        Assert.Equal(Enumerable.Range(7, 6).Select(n => $"printer{n}"), Printers().Order(StringComparer.Ordinal).OrderBy(name => name.Length));
    }

    [Fact]
    public void Devices_revoked_at_once_are_all_gone()
    {
        var devices = new JsonArray([.. Enumerable.Range(1, 8).Select(n => new JsonObject { ["id"] = $"{n}", ["name"] = $"tablet {n}", ["paired"] = "2026-03-09T10:00:00", ["tokenSha256"] = new string('0', 64) })]);
        File.WriteAllText(Path.Combine(shop.Folder, "devices.json"), devices.ToJsonString());
        Assert.Equal(8, shop.Json("serve", "devices")["devices"]!.AsArray().Count);
        AllSucceed(Enumerable.Range(1, 7).Select(n => (string[])["serve", "revoke", $"{n}"]));
        Assert.Equal("8", shop.Json("serve", "devices")["devices"]!.AsArray().Single()!["id"]!.GetValue<string>());
        Assert.Equal(OperatingSystem.IsWindows() ? default : UnixFileMode.UserRead | UnixFileMode.UserWrite, OperatingSystem.IsWindows() ? default : File.GetUnixFileMode(Path.Combine(shop.Folder, "devices.json")));
    }

    /// <summary>The system itself lets go of what a killed program held.</summary>
    [Fact]
    public void A_killed_holder_of_the_lock_blocks_nobody_and_a_living_one_is_waited_for()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "the program flock is wanted");
        shop.Json("shop", "init");
        var file = Path.Combine(shop.Folder, "shop.lock");
        using var holder = shop.StartUnder("flock", file, "-c", "echo held; exec sleep 600");
        Assert.Equal("held", holder.StandardOutput.ReadLine());
        using var waiting = shop.Start("shop", "set", "name", "Alder Lane Lutherie");
        Assert.False(waiting.WaitForExit(TimeSpan.FromSeconds(3)));
        holder.Kill(entireProcessTree: true);
        Assert.True(waiting.WaitForExit(TimeSpan.FromSeconds(30)));
        Assert.Equal(0, waiting.ExitCode);
        Assert.Equal("Alder Lane Lutherie", shop.Json("shop", "show")["name"]!.GetValue<string>());
    }

    [Fact]
    public void Whoever_keeps_the_lock_too_long_is_told_of_and_nothing_is_changed()
    {
        shop.Json("shop", "init");
        var before = File.ReadAllText(Path.Combine(shop.Folder, "shop.json"));
        using (new FileStream(Path.Combine(shop.Folder, "shop.lock"), FileMode.Open, FileAccess.ReadWrite, FileShare.None))
        {
            var run = shop.Run("shop", "set", "name", "Alder Lane Lutherie");
            Assert.Equal(2, run.ExitCode);
            Assert.StartsWith("error JL439", run.Errors, StringComparison.Ordinal);
        }

        Assert.Equal(before, File.ReadAllText(Path.Combine(shop.Folder, "shop.json")));
    }

    private string[] Printers() =>
        [.. JsonNode.Parse(File.ReadAllText(Path.Combine(shop.Folder, "calibration.json")))!.AsArray().Select(one => one!["printer"]!.GetValue<string>())];

    private void AllSucceed(IEnumerable<string[]> lines)
    {
        Process[] running = [.. lines.Select(shop.Start)];
        foreach (var process in running)
        {
            process.StandardOutput.ReadToEnd();
            var errors = process.StandardError.ReadToEnd();
            process.WaitForExit();
            Assert.True(process.ExitCode == 0, errors);
            process.Dispose();
        }
    }
}
