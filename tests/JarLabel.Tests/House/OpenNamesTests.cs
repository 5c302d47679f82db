namespace JarLabel.Tests.House;

/// <summary>A problem names what is to be filled in and what helps, and leaves it to each surface how that is written.</summary>
public partial class OpenNamesTests
{
    [Fact]
    public void No_problem_is_written_for_the_command_line_alone()
    {
        var spelled = Sources().SelectMany(file => Told(file).Where(text => Spelled().IsMatch(text)).Select(text => $"{Path.GetRelativePath(Checkout.Root, file)}: {text.Trim()}"));
        Assert.Empty(spelled);
    }

    [Theory]
    [InlineData("""new("JL101", "Give --cut.", "cut");""", true)]
    [InlineData("""new("JL101", "Try jarlabel thin 1.", "jar");""", true)]
    [InlineData("""new("JL101", Message.Of($"Give {new InputName("cut")}."), "--cut");""", true)]
    [InlineData("""new("JL101", Message.Of($"Give {new InputName("cut")}."), "cut");""", false)]
    [InlineData("""new("JL101", "This is a fault in jarlabel.");""", false)]
    public void An_option_or_a_command_in_a_text_is_found(string line, bool found) => Assert.Equal(found, Spelled().IsMatch(line));

    /// <summary>All lines of the files that hold nothing but problems, and elsewhere every problem that is made.</summary>
    private static IEnumerable<string> Told(string file)
    {
        var code = string.Join('\n', File.ReadLines(file).Where(line => !line.TrimStart().StartsWith("//", StringComparison.Ordinal)));
        return Path.GetFileName(file) is var name && (name.EndsWith("Problems.cs", StringComparison.Ordinal) || name.EndsWith("Cautions.cs", StringComparison.Ordinal))
            ? code.Split('\n')
            : Made().Matches(code).Select(made => made.Value);
    }

    private static IEnumerable<string> Sources() => Directory
        .EnumerateFiles(Path.Combine(Checkout.Root, "src"), "*.cs", SearchOption.AllDirectories)
        .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal));

    [GeneratedRegex("--[a-z]|jarlabel [a-z]")]
    private static partial Regex Spelled();

    [GeneratedRegex("new(?: Problem)?\\(\\s*\"JL[0-9]{3}\".*?;$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Made();
}
