namespace JarLabel.Tests.Operations;

/// <summary>The README's table of commands is that of the declared steps. After a change: <c>JARLABEL_README=write dotnet run --project tests/JarLabel.Tests -- --filter-class "*ReadmeTableTests"</c>.</summary>
public class ReadmeTableTests
{
    private const string Begin = "<!-- steps -->\n", End = "<!-- /steps -->";

    private static string File => Path.Combine(Checkout.Root, "README.md");

    private static string Table => string.Join('\n', ["| command | does |", "| --- | --- |", .. StepTable.Words.Select(Row), ""]);

    [Fact]
    public void The_table_of_commands_is_that_of_the_steps()
    {
        var text = System.IO.File.ReadAllText(File);
        var (begin, end) = (text.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length, text.IndexOf(End, StringComparison.Ordinal));
        if (Environment.GetEnvironmentVariable("JARLABEL_README") == "write")
        {
            System.IO.File.WriteAllText(File, text = text[..begin] + Table + text[end..]);
            end = text.IndexOf(End, StringComparison.Ordinal);
        }

        Assert.Equal(Table, text[begin..end]);
    }

    [Fact]
    public void The_readme_is_for_a_newcomer() => Assert.InRange(new FileInfo(File).Length, 1, 10_240);

    private static string Row(string word) => StepTable.About(word) is { } about
        ? $"| `{word} {string.Join("\\|", StepTable.Under(word).Select(step => step.Verb.Split(' ')[1]))}` | {about} |"
        : $"| `{word}` | {StepTable.Find(word)!.Help} |";
}
