namespace JarLabel.Acceptance;

/// <summary>A step is recorded, and then its label cannot be put in its place: here because something is mounted there, as a container mounts a
/// single file. It is told, the label waits, and it is put there once it can be.</summary>
public sealed class WaitingFileTests : IDisposable
{
    private readonly Shop shop = new();

    public WaitingFileTests()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() && Environment.UserName == "root", "only root can mount");
        shop.Json("mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95");
        File.WriteAllBytes(Label, File.ReadAllBytes(Label)[..^1]); // so that the label that is printed again is another
        Assert.SkipUnless(System("mount", "--bind", Label, Label) == 0, "nothing can be mounted here");
    }

    private string Label => Directory.EnumerateFiles(shop.Labels, "*.pdf").Single();

    public void Dispose()
    {
        System("umount", "-q", Label);
        shop.Dispose();
    }

    [Fact]
    public void It_is_told_with_what_was_recorded_and_told_again_until_it_is_there()
    {
        var label = Label;
        var old = File.ReadAllBytes(label);
        var printed = shop.Run("label", "1");
        Assert.Equal(2, printed.ExitCode);
        Assert.StartsWith("error JL417", printed.Errors, StringComparison.Ordinal);
        Assert.Contains("What happened is recorded", printed.Errors, StringComparison.Ordinal);
        Assert.Equal(old, File.ReadAllBytes(label));

        var noted = shop.Json("note", "1", "strained");
        Assert.Contains(noted["warnings"]!.AsArray(), warning => warning!["code"]!.GetValue<string>() == "JL417");
        var told = shop.Run("note", "1", "looks good");
        Assert.Equal((0, ""), (told.ExitCode, told.Errors));
        Assert.Contains("A file of an earlier step still waits", told.Result, StringComparison.Ordinal);

        Assert.Equal(0, System("umount", label));
        Assert.DoesNotContain("still waits", shop.Run("note", "1", "clear").Result, StringComparison.Ordinal);
        Assert.NotEqual(old, File.ReadAllBytes(label));
        Assert.Equal(0, shop.Run("verify").ExitCode);
    }

    private static int System(params string[] words)
    {
        using var process = Process.Start(new ProcessStartInfo(words[0], words[1..]) { RedirectStandardError = true })!;
        process.WaitForExit();
        return process.ExitCode;
    }
}
