namespace JarLabel.Acceptance;

/// <summary>The help of every command, held to the files in Goldens/help. After a wanted change, read the new texts, then run once with
/// <c>JARLABEL_GOLDENS=write</c>: <c>JARLABEL_GOLDENS=write dotnet run --project tests/JarLabel.Acceptance -- --filter-class "*HelpTests"</c>.</summary>
public sealed partial class HelpTests : IDisposable
{
    private readonly Shop shop = new();

    private static string Folder => Path.Combine(Place.Root, "tests", "JarLabel.Acceptance", "Goldens", "help");

    public void Dispose() => shop.Dispose();

    [Fact]
    public void The_help_of_every_command_is_what_was_read_and_found_good()
    {
        var texts = new SortedDictionary<string, string>(StringComparer.Ordinal);
        Gather([], texts);
        if (Environment.GetEnvironmentVariable("JARLABEL_GOLDENS") == "write")
        {
            Directory.CreateDirectory(Folder);
            texts.ToList().ForEach(t => File.WriteAllText(Path.Combine(Folder, t.Key), t.Value));
        }

        Assert.Equal(texts.Keys, Directory.GetFiles(Folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.All(texts, t => Assert.Equal(File.ReadAllText(Path.Combine(Folder, t.Key)), t.Value));
    }

    private void Gather(string[] command, SortedDictionary<string, string> texts)
    {
        var run = shop.Run([.. command, "--help"]);
        Assert.Equal(0, run.ExitCode);
        Assert.Equal("", run.Errors);
        var text = string.Join('\n', run.Result.Split('\n').Select(l => l.TrimEnd()));
        texts[string.Join('-', command.Prepend("jarlabel")) + ".txt"] = text;
        Assert.All(OptionWithoutDescription().Matches(text), m => Assert.Fail($"{string.Join(' ', command)}: {m.Value} has no description"));
        foreach (var below in Subcommand().Matches(text.Split("Commands:\n").ElementAtOrDefault(1) ?? "").Select(m => m.Groups[1].Value))
        {
            Gather([.. command, below], texts);
        }
    }

    [GeneratedRegex("^  ([a-z]+)", RegexOptions.Multiline)]
    private static partial Regex Subcommand();

    [GeneratedRegex("^  --[a-z-]+( <[^>]+>)?$", RegexOptions.Multiline)]
    private static partial Regex OptionWithoutDescription();
}
