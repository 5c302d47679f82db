namespace JarLabel.Acceptance;

public sealed class TwoAtOnceTests : IDisposable
{
    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public void Mixes_at_the_same_moment_all_get_a_number_and_a_label_of_their_own()
    {
        var running = Enumerable.Range(0, 4).Select(_ => shop.Start(Mix)).ToArray();
        foreach (var process in running)
        {
            process.StandardOutput.ReadToEnd();
            Assert.True(process.WaitForExit(TimeSpan.FromMinutes(1)));
            Assert.Equal(0, process.ExitCode);
            process.Dispose();
        }

        Assert.Equal([1, 2, 3, 4], Numbers());
        Assert.Equal(4, Directory.GetFiles(shop.Labels).Length);
    }

    [Fact]
    public void A_kill_in_the_middle_leaves_a_whole_jar_or_none()
    {
        var random = new Random(20260309);
        for (var kill = 0; kill < 12; kill++)
        {
            using var process = shop.Start(Mix);
            Thread.Sleep(random.Next(20, 600));
            process.Kill();
            process.WaitForExit();
        }

        Assert.Equal(0, shop.Run(Mix).ExitCode);
        var numbers = Numbers();
        Assert.Equal(Enumerable.Range(1, numbers.Length), numbers);
        Assert.All(numbers, number => Assert.True(File.Exists(LabelOf(number)), $"jar {number} has no label file"));
        Assert.Equal(numbers.Length, Directory.GetFiles(shop.Labels).Length);
    }

    private static string[] Mix => ["mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95"];

    private int[] Numbers() => [.. shop.Json("shelf")["jars"]!.AsArray().Select(j => j!["number"]!.GetValue<int>()).Order()];

    private string LabelOf(int number) =>
        Path.Combine(shop.Folder, shop.Json("jar", $"{number}")["history"]!.AsArray().Last(e => e!["event"]!.GetValue<string>() == "Labelled")!["file"]!.GetValue<string>());
}
